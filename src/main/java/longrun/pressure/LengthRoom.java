package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.FittingAllowance;
import longrun.plan.Leg;
import longrun.quantity.Length;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;

/**
 * How much longer the last leg of a stage's longest run can be with every size of the stage unchanged: until some
 * section's next row asks for another size.
 */
final class LengthRoom {

    /** Lengths are compared to 0.001 ft, so half of that still rounds to the row. */
    private static final double HALF_STEP_FT = 0.0005;

    /** The share added to legs whose turns are not known, where fittings are counted. */
    private static final double UNDIRECTED_SHARE = 0.20;

    private final Sizing sizing;
    private final Piping piping;
    private final Stage stage;
    private final StageSize size;

    LengthRoom(Sizing sizing, int stage) {
        this.sizing = sizing;
        this.piping = sizing.piping();
        this.stage = piping.stages().get(stage);
        this.size = sizing.stage(stage);
    }

    /** Rounded down to 0.01 ft; nothing where a section is undersized or has no size; empty where one is unknown. */
    Optional<Length> find() {
        if (!size.known() || size.longestRunTo().isEmpty() || !piping.isComplete(stage.regulatorIndex())) {
            return Optional.empty();
        }
        if (stage.sections().stream().anyMatch(s -> sizing.section(s).status() == SectionStatus.UNKNOWN)) {
            return Optional.empty();
        }
        if (isBlocked()) {
            return Optional.of(Length.ZERO);
        }
        double limit = Double.POSITIVE_INFINITY;
        for (int s : stage.sections()) {
            limit = Math.min(limit, limitFt(sizing.section(s)));
        }
        return Optional.of(Length.ofFeet(hundredths(limit) / 100.0));
    }

    /** Whether a section is undersized or has no size already. */
    boolean isBlocked() {
        return stage.sections().stream()
                .map(s -> sizing.section(s).status())
                .anyMatch(s -> s == SectionStatus.UNDERSIZED || s == SectionStatus.NO_SIZE);
    }

    /** Whether a section stays as it is down to the last row of its table. */
    boolean endsTable(int section) {
        CapacityTable table = sizing.section(section).table().orElseThrow();
        return limitFt(sizing.section(section))
                == table.run(table.rowCount() - 1).feet();
    }

    /** The longest run that leaves one section as it is, feet: the last of its table's rows with the same answer. */
    private static double limitFt(SectionSize section) {
        CapacityTable table = section.table().orElseThrow();
        int row = section.row().orElseThrow();
        while (row + 1 < table.rowCount() && same(section, table, row + 1)) {
            row++;
        }
        return table.run(row).feet();
    }

    private static boolean same(SectionSize section, CapacityTable table, int row) {
        boolean needed = section.needed().isEmpty()
                || carries(section, table, row, section.needed().getAsInt());
        return needed && carries(section, table, row, section.used().orElseThrow());
    }

    private static boolean carries(SectionSize section, CapacityTable table, int row, int column) {
        return table.carries(row, column, section.load().orElseThrow());
    }

    private long hundredths(double limitFt) {
        double run = size.longestRun().orElseThrow().feet();
        long more = (long) Math.floor((limitFt + HALF_STEP_FT - run) / feetPerFoot() * 100);
        while (more > 0 && over(run, more, limitFt)) {
            more--;
        }
        while (!over(run, more + 1, limitFt)) {
            more++;
        }
        return Math.max(0, more);
    }

    private boolean over(double run, long hundredths, double limitFt) {
        return Length.ofFeet(run + hundredths / 100.0 * feetPerFoot()).rounded().feet() > limitFt;
    }

    /** How much the run grows for a foot added to its last leg. */
    private double feetPerFoot() {
        if (sizing.allowance() instanceof FittingAllowance.Share share) {
            return 1 + share.share().fraction();
        }
        int last = size.longestRunTo().orElseThrow().section();
        List<Leg> legs = piping.section(last).legs().findValue().orElse(List.of());
        boolean undirected = !legs.isEmpty()
                && legs.get(legs.size() - 1).direction().isEmpty()
                && piping.turns(last).undirected().feet() > 0;
        boolean counted = sizing.allowance() instanceof FittingAllowance.Counted;
        return counted && undirected ? 1 + UNDIRECTED_SHARE : 1;
    }

    /** The sections whose answer changes as soon as the run is longer than {@link #find} allows, in the plan's order. */
    List<Integer> next() {
        double limit = Double.POSITIVE_INFINITY;
        List<Integer> out = new ArrayList<>();
        List<Integer> sections = stage.sections().stream().sorted().toList();
        for (int s : sections) {
            if (sizing.section(s).row().isEmpty() || sizing.section(s).used().isEmpty()) {
                continue;
            }
            double here = limitFt(sizing.section(s));
            if (here < limit) {
                limit = here;
                out.clear();
            }
            if (here == limit) {
                out.add(s);
            }
        }
        return out;
    }
}
