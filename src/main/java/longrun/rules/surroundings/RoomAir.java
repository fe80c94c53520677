package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Plan;
import longrun.plan.Room;
import longrun.plan.Room.Opening;
import longrun.quantity.Same;

/**
 * The ways to air for combustion in one room: its own volume by the standard method or by its known air change (IFGC
 * 304.5.1, 304.5.2), its volume with rooms it opens into (304.5.3), or openings outdoors (304.6). Where an opening sits
 * in the wall, its least side and the air a fan brings are no entries of a plan.
 */
public final class RoomAir {

    private final Plan plan;
    private final Room room;
    private final String pointer;
    private final boolean doubtful;
    private final Burners burners;

    private RoomAir(Plan plan, int index, boolean doubtful) {
        this.plan = plan;
        this.room = plan.rooms().get(index);
        this.pointer = "/rooms/" + index;
        this.doubtful = doubtful;
        this.burners = Burners.in(plan, room, doubtful);
    }

    /**
     * @param index of the room in the plan
     * @param doubtful whether an appliance whose vent is not entered counts as one that takes air
     */
    static RoomAir of(Plan plan, int index, boolean doubtful) {
        return new RoomAir(plan, index, doubtful);
    }

    /** The ways of a room, with every burner that takes or may take its air there; none where no burner does. */
    public static List<AirWay> waysOf(Plan plan, int index) {
        RoomAir air = of(plan, index, true);
        if (air.burners.count() == 0 || air.burners.btuh() <= 0) {
            return List.of();
        }
        List<AirWay> all = air.ways();
        air.otherMethod().ifPresent(other -> all.add(1, other));
        return all;
    }

    /** Where the air change is known, the sum of the method for a volume that does not decide. */
    private Optional<AirWay> otherMethod() {
        Optional<Double> change = airChange(room);
        if (!room.volume().isKnown() || change.isEmpty()) {
            return Optional.empty();
        }
        double has = room.volume().findValue().orElseThrow().cubicFeet();
        double ach = change.get();
        double standard = AirNumbers.ROOM_PER_THOUSAND * burners.btuh() / 1000;
        double known = byAirChange(burners, ach);
        if (!Same.atLeast(ach, AirNumbers.LEAST_AIR_CHANGE)) {
            return Optional.of(AirWay.of(
                    false,
                    sum(burners, standard) + ", a way not open to a room with less than "
                            + String.format(Locale.ROOT, "%.2f", AirNumbers.LEAST_AIR_CHANGE)
                            + " air changes an hour"));
        }
        double wanted = Math.max(standard, known);
        return Optional.of(AirWay.of(
                Same.atLeast(has, wanted), wanted == standard ? sum(burners, standard) : sum(burners, ach, known)));
    }

    Burners burners() {
        return burners;
    }

    /** Volume first, then openings. */
    List<AirWay> ways() {
        List<AirWay> all = new ArrayList<>();
        all.add(volume(burners, List.of(room), ""));
        if (!room.openings().isKnown()) {
            if (room.openings().isUnknown()) {
                all.add(AirWay.open(
                        "the openings of " + name() + " are not entered",
                        "Which openings for air has " + name() + ", where do they lead, and how large are they?",
                        pointer + "/openings"));
            }
            return all;
        }
        List<Opening> openings = room.openings().findValue().orElse(List.of());
        for (int i = 0; i < openings.size(); i++) {
            Opening o = openings.get(i);
            if (!o.to().isKnown() || !o.area().isKnown()) {
                all.add(AirWay.open(
                        "where an opening of " + name() + " leads, or how large it is, is not entered",
                        "Where does each opening for air of " + name() + " lead, and what free area has it?",
                        pointer + "/openings/" + i + (o.to().isKnown() ? "/area" : "/to")));
            }
        }
        outdoors(openings).ifPresent(all::add);
        joined(openings).ifPresent(all::add);
        return all;
    }

    /** The volume the rooms have together against the one the burners want. */
    private AirWay volume(Burners all, List<Room> rooms, String with) {
        double has = 0;
        for (Room r : rooms) {
            if (!r.volume().isKnown()) {
                return AirWay.open(
                        "the volume of " + AppliancePlace.nameOf(r) + " is not entered",
                        "How large is " + AppliancePlace.nameOf(r) + ": length, width and height?",
                        "/rooms/" + plan.rooms().indexOf(r) + "/volume");
            }
            has += r.volume().findValue().orElseThrow().cubicFeet();
        }
        double standard = AirNumbers.ROOM_PER_THOUSAND * all.btuh() / 1000;
        List<Double> changes =
                rooms.stream().flatMap(r -> airChange(r).stream()).toList();
        double ach = changes.stream().min(Double::compare).orElse(AirNumbers.LEAST_AIR_CHANGE);
        boolean tight = !Same.atLeast(ach, AirNumbers.LEAST_AIR_CHANGE);
        // one room of several whose air change is not known takes the smaller volume away from all of them
        boolean known = tight || changes.size() == rooms.size();
        double wanted = known ? byAirChange(all, ach) : standard;
        if (!tight) {
            wanted = Math.min(wanted, standard);
        }
        boolean standardDecides = !known || wanted == standard;
        String sum = (standardDecides ? sum(all, standard) : sum(all, ach, wanted))
                + "; " + name() + with + " has "
                + (rooms.size() == 1 ? room.volume().findText().orElse("") : number(has) + " ft3");
        return AirWay.of(Same.atLeast(has, wanted), sum);
    }

    /** Times an hour; "none" is a room into which no air leaks. */
    private static Optional<Double> airChange(Room room) {
        return room.infiltration()
                .fold(change -> Optional.of(change.perHour()), () -> Optional.of(0.0), Optional::empty);
    }

    /**
     * The room volume the burners want at a known air change (IFGC 304.5.2), ft3; without end where no air leaks in.
     */
    static double byAirChange(Burners all, double perHour) {
        double counted = Math.min(perHour, AirNumbers.GREATEST_AIR_CHANGE);
        return counted <= 0
                ? Double.POSITIVE_INFINITY
                : (AirNumbers.NATURAL * all.naturalBtuh() + AirNumbers.FAN_ASSISTED * all.fanBtuh()) / 1000 / counted;
    }

    private static String sum(Burners all, double wanted) {
        return number(AirNumbers.ROOM_PER_THOUSAND) + " ft3 for each 1,000 of " + number(all.btuh()) + " Btu/h make "
                + number(wanted) + " ft3";
    }

    private static String sum(Burners all, double ach, double wanted) {
        List<String> parts = new ArrayList<>();
        if (all.naturalBtuh() > 0) {
            parts.add(number(AirNumbers.NATURAL) + " ft3 for each 1,000 of " + number(all.naturalBtuh()) + " Btu/h");
        }
        if (all.fanBtuh() > 0) {
            parts.add(number(AirNumbers.FAN_ASSISTED) + " ft3 for each 1,000 of " + number(all.fanBtuh())
                    + " Btu/h with a fan");
        }
        return String.join(" and ", parts) + ", by "
                + String.format(Locale.ROOT, "%.2f", Math.min(ach, AirNumbers.GREATEST_AIR_CHANGE))
                + " air changes an hour, make "
                + (Double.isInfinite(wanted) ? "more than any room" : number(wanted) + " ft3");
    }

    private static double freeIn2(Opening o) {
        double area = o.area().findValue().map(a -> a.squareInches()).orElse(0.0);
        return area * o.louvre().findValue().map(AirNumbers::free).orElse(1.0);
    }

    /** Two openings outdoors, or a single larger one. */
    private Optional<AirWay> outdoors(List<Opening> openings) {
        List<Opening> out = openings.stream()
                .filter(o -> o.to().is("outdoors") || o.to().is("horizontal-duct"))
                .filter(o -> o.area().isKnown())
                .toList();
        if (out.isEmpty()) {
            return Optional.empty();
        }
        double two = burners.btuh() / AirNumbers.OUTDOOR_TWO;
        double duct = burners.btuh() / AirNumbers.OUTDOOR_DUCT;
        double one = burners.btuh() / AirNumbers.OUTDOOR_ONE;
        long wide = out.stream()
                .filter(o -> Same.atLeast(freeIn2(o), o.to().is("outdoors") ? two : duct))
                .count();
        boolean single = out.stream().anyMatch(o -> Same.atLeast(freeIn2(o), one) && o.to().is("outdoors"));
        String has = String.join(
                ", ", out.stream().map(o -> number(freeIn2(o)) + " in2").toList());
        return Optional.of(AirWay.of(
                wide >= 2 || single,
                "outdoors two openings of " + number(two) + " in2 each (" + number(duct)
                        + " in2 by a horizontal duct), or one of " + number(one) + " in2, are wanted for "
                        + number(burners.btuh()) + " Btu/h; " + name() + " has " + has));
    }

    /** The rooms it opens into by two openings large enough, counted together with it. */
    private Optional<AirWay> joined(List<Opening> openings) {
        if (openings.stream().anyMatch(o -> o.to().is("indoors"))) {
            return Optional.of(AirWay.open(
                    "an opening of " + name() + " leads into the rest of the house, whose volume is not entered",
                    "How large is the space that " + name() + " opens into, entered as a room of its own?",
                    pointer + "/openings"));
        }
        Map<Integer, List<Opening>> into = new HashMap<>();
        for (Opening o : openings) {
            int other = indexOf(o.to().findValue().orElse(""));
            if (other >= 0 && o.area().isKnown()) {
                into.computeIfAbsent(other, k -> new ArrayList<>()).add(o);
            }
        }
        if (into.isEmpty()) {
            return Optional.empty();
        }
        Burners all = burners;
        List<Room> rooms = new ArrayList<>(List.of(room));
        for (int other : into.keySet().stream().sorted().toList()) {
            all = all.plus(Burners.in(plan, plan.rooms().get(other), doubtful));
            rooms.add(plan.rooms().get(other));
        }
        double each = Math.max(AirNumbers.INDOOR_LEAST, AirNumbers.INDOOR_PER_THOUSAND * all.btuh() / 1000);
        for (Map.Entry<Integer, List<Opening>> e : into.entrySet()) {
            long wide = e.getValue().stream()
                    .filter(o -> Same.atLeast(freeIn2(o), each))
                    .count();
            if (wide < 2) {
                return Optional.of(AirWay.of(
                        false,
                        "into " + AppliancePlace.nameOf(plan.rooms().get(e.getKey())) + " two openings of "
                                + number(each) + " in2 each are wanted; there are "
                                + String.join(
                                        ", ",
                                        e.getValue().stream()
                                                .map(o -> number(freeIn2(o)) + " in2")
                                                .toList())));
            }
        }
        String with = " with "
                + String.join(
                        " and ",
                        rooms.stream().skip(1).map(AppliancePlace::nameOf).toList());
        return Optional.of(volume(all, rooms, with));
    }

    private int indexOf(String id) {
        for (int i = 0; i < plan.rooms().size(); i++) {
            if (plan.rooms().get(i).id().equals(id) && plan.rooms().get(i) != room) {
                return i;
            }
        }
        return -1;
    }

    private String name() {
        return AppliancePlace.nameOf(room);
    }

    /** Whole numbers, and a tenth below a hundred. */
    private static String number(double value) {
        return value >= 100 || value == Math.rint(value)
                ? String.format(Locale.ROOT, "%,.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }
}
