package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.plan.Appliance;
import longrun.plan.Room;
import longrun.plan.choice.ApplianceKind;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/**
 * An appliance and the room it stands in.
 *
 * @param room empty outdoors, and where it is not entered
 * @param outdoors known to stand outdoors, or of a kind that does where no room is entered
 */
record AppliancePlace(
        Appliance appliance, Place place, Optional<Room> room, Optional<String> roomPointer, boolean outdoors) {

    private static final Set<ApplianceKind> OUTDOORS = EnumSet.of(
            ApplianceKind.OUTDOOR_GRILL,
            ApplianceKind.STANDBY_GENERATOR,
            ApplianceKind.POOL_HEATER,
            ApplianceKind.LIGHT);

    static List<AppliancePlace> listIn(House house) {
        List<AppliancePlace> all = new ArrayList<>();
        List<Appliance> appliances = house.plan().appliances();
        for (int i = 0; i < appliances.size(); i++) {
            Appliance a = appliances.get(i);
            int at = indexOf(house.plan().rooms(), a);
            all.add(new AppliancePlace(
                    a,
                    house.appliance(i),
                    at < 0 ? Optional.empty() : Optional.of(house.plan().rooms().get(at)),
                    at < 0 ? Optional.empty() : Optional.of("/rooms/" + at),
                    a.room().isNone() || (a.room().isUnknown() && a.kind().is(OUTDOORS::contains))));
        }
        return all;
    }

    private static int indexOf(List<Room> rooms, Appliance a) {
        for (int i = 0; i < rooms.size(); i++) {
            if (a.room().is(rooms.get(i).id())) {
                return i;
            }
        }
        return -1;
    }

    /** How a person would name the room within a sentence. */
    String roomName() {
        return room.map(AppliancePlace::nameOf).orElse("its room");
    }

    static String nameOf(Room room) {
        return "the room " + room.name().findValue().filter(n -> !n.isBlank()).orElse(room.id());
    }

    Verdict askRoom(Threshold own) {
        return Judge.asks(
                own,
                place,
                "the room of {who} is not entered",
                Question.owner("In which room, or outdoors: {who}?"),
                place.pointer() + "/room");
    }
}
