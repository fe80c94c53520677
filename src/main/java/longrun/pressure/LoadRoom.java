package longrun.pressure;

import java.util.Optional;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.quantity.HeatRate;
import longrun.quantity.Ratio;
import longrun.quantity.Same;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;

/**
 * How much load can be added at the end of each section with every size on the way back to the tank unchanged. Each
 * section allows what its cell carries less what it carries already; a run allows the least of its sections.
 */
final class LoadRoom {

    /** The least room found so far on the way from the tank. */
    private record Room(boolean known, double btuh, double leastCapacity, int tightest) {
        static final Room AT_THE_TANK = new Room(true, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, -1);
    }

    private final Sizing sizing;
    private final Piping piping;
    private final double share;
    private final Room[] rooms;

    LoadRoom(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
        this.share = diversity(piping.plan());
        this.rooms = new Room[piping.sectionCount()];
        for (int s = 0; s < rooms.length; s++) {
            fill(s);
        }
    }

    private static double diversity(Plan plan) {
        return plan.diversity()
                .filter(d -> d.reason().is(r -> !r.isBlank()))
                .flatMap(d -> d.share().findValue())
                .map(Ratio::fraction)
                .orElse(1.0);
    }

    /** Fills a section's room and that of every section before it that has none yet, the tank's end first. */
    private void fill(int section) {
        java.util.ArrayDeque<Integer> waiting = new java.util.ArrayDeque<>();
        for (int s = section; s >= 0 && rooms[s] == null; s = before(s)) {
            waiting.push(s);
        }
        while (!waiting.isEmpty()) {
            int s = waiting.pop();
            int before = before(s);
            rooms[s] = with(before < 0 ? Room.AT_THE_TANK : rooms[before], s);
        }
    }

    /** The section a section's gas comes through, across a regulator too; -1 at the tank. */
    private int before(int section) {
        if (piping.parent(section) >= 0) {
            return piping.parent(section);
        }
        return piping.findStage(section)
                .map(stage -> piping.sectionFeeding(stage.regulatorIndex()))
                .orElse(-1);
    }

    private Room with(Room before, int s) {
        SectionSize size = sizing.section(s);
        boolean blocked = size.status() == SectionStatus.UNDERSIZED || size.status() == SectionStatus.NO_SIZE;
        boolean known =
                size.status() != SectionStatus.UNKNOWN && piping.connected(s).complete() && !piping.isProvisional(s);
        if (blocked || !known) {
            return new Room(before.known() && known, 0, 0, s);
        }
        double capacity = Math.min(cell(size, size.needed()), cell(size, size.used()));
        double room = room(capacity, piping.connected(s).known().btuh());
        return new Room(
                before.known(),
                Math.min(before.btuh(), room),
                Math.min(before.leastCapacity(), capacity),
                room < before.btuh() ? s : before.tightest());
    }

    private static double cell(SectionSize size, OptionalInt column) {
        Optional<CapacityTable> table = size.table();
        return table.isPresent() && size.row().isPresent() && column.isPresent()
                ? table.get()
                        .capacity(size.row().getAsInt(), column.getAsInt())
                        .orElse(HeatRate.ZERO)
                        .btuh()
                : Double.POSITIVE_INFINITY;
    }

    /** Whole Btu/h between a connected load and a capacity, counted as the sizing counts. */
    private double room(double capacity, double connected) {
        double added = Math.floor(capacity / share - connected);
        while (!Double.isInfinite(added) && Same.atLeast(capacity, share * (connected + added + 1))) {
            added++;
        }
        return Math.max(0, added);
    }

    /**
     * Whole Btu/h that can be added at the end of a section; empty where the way to the tank is not known.
     *
     * @param input of the one appliance that grows: a share for diversity never counts less than the largest
     */
    Optional<HeatRate> room(int section, HeatRate input) {
        Room room = rooms[section];
        if (!room.known()) {
            return Optional.empty();
        }
        double alone = wholeUpTo(room.leastCapacity(), input.btuh());
        return Optional.of(HeatRate.ofBtuh(Math.max(0, Math.min(room.btuh(), alone))));
    }

    /** The greatest whole Btu/h that can be added to a load within a capacity; negative where it is over already. */
    static double wholeUpTo(double capacity, double load) {
        double added = Math.floor(capacity - load);
        return Same.atLeast(capacity, load + added + 1) ? added + 1 : added;
    }

    /** What hangs on the end of a section by itself: an appliance's input or a reserve. */
    HeatRate own(int section) {
        return piping.findOutlet(section)
                .map(o -> switch (o.kind()) {
                    case APPLIANCE ->
                        piping.plan().appliances().get(o.item()).input().findValue();
                    case CAPPED, OPEN -> piping.section(section).reserve().findValue();
                    case REGULATOR -> Optional.<HeatRate>empty();
                })
                .orElse(Optional.empty())
                .orElse(HeatRate.ZERO);
    }

    /** The section that stops more load first, -1 where nothing does. */
    int tightest(int section) {
        return rooms[section].tightest();
    }
}
