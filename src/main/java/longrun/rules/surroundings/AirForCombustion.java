package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.plan.Plan;
import longrun.plan.Room;
import longrun.plan.choice.ApplianceVent;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * A room that burners take air from is large enough or has openings enough (CA-01 to CA-05); without, they make carbon
 * monoxide. Judged at the room. What is not known counts against it, never for it.
 */
final class AirForCombustion implements Rule {

    @Override
    public String name() {
        return "air-for-combustion";
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        for (AppliancePlace standing : AppliancePlace.listIn(house)) {
            boolean takesNone =
                    standing.outdoors() || standing.appliance().vent().is(ApplianceVent.DIRECT);
            if (standing.room().isEmpty()) {
                verdicts.add(takesNone ? Judge.notFor(own, standing.place()) : standing.askRoom(own));
            }
        }
        Plan plan = house.plan();
        for (int i = 0; i < plan.rooms().size(); i++) {
            Room room = plan.rooms().get(i);
            verdicts.add(judge(own, plan, i, new Place(room.id(), "/rooms/" + i, AppliancePlace.nameOf(room))));
        }
        return verdicts;
    }

    private static Verdict judge(Threshold own, Plan plan, int index, Place place) {
        RoomAir worst = RoomAir.of(plan, index, true);
        if (worst.burners().count() == 0) {
            return Judge.notFor(own, place);
        }
        RoomAir sure = RoomAir.of(plan, index, false);
        List<AirWay> ways = sure.ways();
        boolean some = sure.burners().btuh() > 0;
        if (some && ways.stream().allMatch(w -> w.outcome() == AirWay.Outcome.SHORT)) {
            return broken(own, place, ways);
        }
        Burners all = worst.burners();
        if (!all.noInput().isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "{who} {holds|hold} a burner whose input is not entered",
                    Question.plate("What is the input of every burner in {who}, Btu/h?"),
                    all.noInput().get(0));
        }
        List<AirWay> worstWays = worst.ways();
        if (worstWays.stream().anyMatch(w -> w.outcome() == AirWay.Outcome.ENOUGH)) {
            return Judge.holds(own, place);
        }
        Optional<AirWay> open = worstWays.stream()
                .filter(w -> w.outcome() == AirWay.Outcome.OPEN)
                .findFirst();
        if (!all.noVent().isEmpty()
                && (open.isEmpty() || ways.stream().anyMatch(w -> w.outcome() == AirWay.Outcome.ENOUGH))) {
            return Judge.asks(
                    own,
                    place,
                    "{who} {holds|hold} an appliance whose vent is not entered",
                    Question.plate("Is it direct-vent, so that it takes no air from {who}?"),
                    all.noVent().get(0));
        }
        AirWay.Ask ask = open.flatMap(AirWay::ask).orElseThrow();
        String shortSoFar = worstWays.stream()
                .filter(w -> w.outcome() == AirWay.Outcome.SHORT)
                .map(w -> w.sum() + "; ")
                .collect(Collectors.joining());
        return Judge.asks(own, place, shortSoFar + ask.found(), Question.fitter(ask.question()), ask.field());
    }

    private static Verdict broken(Threshold own, Place place, List<AirWay> ways) {
        return Judge.broken(
                own,
                place,
                "{who} {gives its|give their} burners too little air: "
                        + ways.stream().map(AirWay::sum).collect(Collectors.joining("; ")),
                "Open it to a larger room or outdoors by openings of the areas named, or fit direct-vent appliances.",
                place.pointer() + (ways.size() > 1 ? "/openings" : "/volume"));
    }
}
