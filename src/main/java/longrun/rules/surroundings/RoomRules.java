package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.EntryName;
import longrun.plan.Room;
import longrun.plan.choice.ApplianceVent;
import longrun.plan.choice.RoomKind;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Rooms that propane or a burner makes dangerous: below the ground, bedrooms and baths, garages (AD-04, AD-08). */
final class RoomRules {

    private RoomRules() {}

    static List<Rule> rules() {
        return List.of(
                AskedOnce.ofAppliances(new BelowGrade()),
                AskedOnce.ofAppliances(new BedroomOrBath()),
                AskedOnce.ofAppliances(new Garage()));
    }

    /** A rule judged at each appliance by the room it stands in. */
    private abstract static class OfRoom implements Rule {

        @Override
        public final List<Verdict> judge(House house) {
            Threshold own = house.limits().get(name(), "");
            List<Verdict> verdicts = new ArrayList<>();
            for (AppliancePlace standing : AppliancePlace.listIn(house)) {
                if (standing.outdoors()) {
                    verdicts.add(Judge.notFor(own, standing.place()));
                } else if (standing.room().isEmpty()) {
                    verdicts.add(standing.askRoom(own));
                } else {
                    verdicts.add(judge(own, standing, standing.room().get()));
                }
            }
            return verdicts;
        }

        abstract Verdict judge(Threshold own, AppliancePlace standing, Room room);

        static Verdict askKind(Threshold own, AppliancePlace standing) {
            return Judge.asks(
                    own,
                    standing.place(),
                    "what kind of room {who} {is|are} in is not entered",
                    Question.owner("Is " + standing.roomName() + " a garage, a bedroom, a bath or another room?"),
                    standing.roomPointer().orElseThrow() + "/kind");
        }
    }

    /** Propane is heavier than air and lies on the floor of a room that it cannot leave. */
    private static final class BelowGrade extends OfRoom {

        @Override
        public String name() {
            return "appliance-below-grade";
        }

        @Override
        Verdict judge(Threshold own, AppliancePlace standing, Room room) {
            String field = standing.roomPointer().orElseThrow() + "/belowGrade";
            if (room.belowGrade().is(true)) {
                return Judge.brokenAsking(
                        own,
                        standing.place(),
                        "{who} {is|are} in " + standing.roomName() + ", whose floor is below the ground "
                                + EntryName.entered("belowGrade", "true"),
                        "Set {who} in a room from which gas can flow out, or as the authority allows it there.",
                        Question.inspector(
                                "{Is|Are} {who} allowed in a room below the ground, and with which ventilation and alarm?"),
                        field);
            }
            return room.belowGrade().isUnknown()
                    ? Judge.asks(
                            own,
                            standing.place(),
                            "whether the floor of " + standing.roomName() + " is below the ground is not entered",
                            Question.owner("Is the floor of " + standing.roomName() + " below the ground outside?"),
                            field)
                    : Judge.holds(own, standing.place());
        }
    }

    /** A burner that takes its air from the room keeps out of where people sleep or bathe. */
    private static final class BedroomOrBath extends OfRoom {

        @Override
        public String name() {
            return "appliance-bedroom-or-bath";
        }

        @Override
        Verdict judge(Threshold own, AppliancePlace standing, Room room) {
            if (standing.appliance().vent().is(ApplianceVent.DIRECT)) {
                return Judge.holds(own, standing.place());
            }
            if (room.kind().isNone() || room.kind().is(k -> k == RoomKind.OTHER || k == RoomKind.GARAGE)) {
                return Judge.holds(own, standing.place());
            }
            if (room.kind().isUnknown()) {
                return askKind(own, standing);
            }
            if (standing.appliance().vent().isUnknown()) {
                return Judge.asks(
                        own,
                        standing.place(),
                        "{who} {is|are} in a " + kind(room) + ", and how {it is|they are} vented is not entered",
                        Question.plate(
                                "{Is|Are} {who} direct-vent, with {its|their} air and exhaust through the wall?"),
                        standing.place().pointer() + "/vent");
            }
            return Judge.brokenAsking(
                    own,
                    standing.place(),
                    "{who} {takes its|take their} air from a " + kind(room) + " "
                            + EntryName.entered("vent", standing.appliance().vent()),
                    "Fit a direct-vent one, or set it in another room.",
                    Question.inspector("Does an exception hold for {who} in a " + kind(room) + "?"),
                    standing.roomPointer().orElseThrow() + "/kind");
        }

        private static String kind(Room room) {
            return room.kind().is(RoomKind.BATH) ? "bathroom" : "bedroom";
        }
    }

    /** Spilled fuel's vapour lies on a garage floor. */
    private static final class Garage extends OfRoom {

        @Override
        public String name() {
            return "appliance-garage";
        }

        @Override
        Verdict judge(Threshold own, AppliancePlace standing, Room room) {
            if (room.kind().isUnknown()) {
                return askKind(own, standing);
            }
            if (!room.kind().is(RoomKind.GARAGE)) {
                return Judge.notFor(own, standing.place());
            }
            String field = standing.place().pointer() + "/ignitionAboveFloor";
            Question question = Question.plate(
                    "How far above the garage floor {does|do} {who} light, or {is it|are they} labelled as flammable-vapour resistant?");
            return standing.appliance()
                    .ignitionAboveFloor()
                    .fold(
                            d -> switch (own.test(d)) {
                                case HOLDS -> Judge.holds(own, standing.place());
                                case ASKS -> Judge.asks(own, standing.place(), found(standing), question, field);
                                default -> broken(own, standing, question, field);
                            },
                            () -> broken(own, standing, question, field),
                            () -> Judge.asks(
                                    own,
                                    standing.place(),
                                    "how far above the garage floor {who} {lights|light} is not entered",
                                    question,
                                    field));
        }

        private static Verdict broken(Threshold own, AppliancePlace standing, Question question, String field) {
            return Judge.brokenAsking(
                    own,
                    standing.place(),
                    found(standing),
                    "Raise it, so that every spark, switch and flame is {limit} or more above the floor; one labelled as"
                            + " flammable-vapour resistant stands as its maker says.",
                    question,
                    field);
        }

        private static String found(AppliancePlace standing) {
            return "{who} {lights|light} "
                    + standing.appliance().ignitionAboveFloor().findText().orElse("") + " above the floor of a garage";
        }
    }
}
