package longrun.sizing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.piping.Load;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Fact;
import longrun.plan.FittingAllowance;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * Sizes one stage by the longest-length method. Where fittings are counted their length depends on the size and the
 * size on the length: both are worked in turn, sizes only growing, until nothing changes.
 */
final class StageSizer {

    private final Piping piping;
    private final Stage stage;
    private final FittingAllowance allowance;
    private final TableChoice choice;
    private final RunLengths runs;
    private final TableChoice.Chosen[] chosen;
    private final int[] columns;

    StageSizer(Piping piping, Stage stage, FittingAllowance allowance, TableChoice choice) {
        this.piping = piping;
        this.stage = stage;
        this.allowance = allowance;
        this.choice = choice;
        this.chosen = new TableChoice.Chosen[stage.sections().size()];
        this.columns = new int[chosen.length];
        this.runs = new RunLengths(piping, stage, allowance);
    }

    /** Sizes the stage and puts each section's size, and the feet of its own counted fittings, at its index. */
    StageSize into(SectionSize[] sizes, double[] countedFt) {
        if (!complete()) {
            stage.sections().forEach(s -> sizes[s] = SectionSize.unknown());
            return StageSize.unknown();
        }
        Pressure inlet = stage.regulator().outlet().findValue().orElseThrow();
        Pressure drop = stage.regulator().allowedDrop().findValue().orElseThrow();
        for (int k = 0; k < chosen.length; k++) {
            Section section = piping.section(stage.sections().get(k));
            chosen[k] = choice.choose(section, section.material().findValue().orElseThrow(), inlet, drop);
            columns[k] = -1;
        }
        runs.measure(chosen, columns);
        grow(runs.longestFt());
        if (allowance instanceof FittingAllowance.Counted) {
            do {
                runs.measure(chosen, columns);
            } while (grow(runs.longestFt()));
        }
        for (int k = 0; k < chosen.length; k++) {
            sizes[stage.sections().get(k)] = size(k, runs.longestFt());
        }
        countInUse(sizes, countedFt);
        return new StageSize(
                true,
                Optional.of(Length.ofFeet(runs.longestFt())),
                Optional.of(Length.ofFeet(runs.longestMeasuredFt())),
                runs.longestTo());
    }

    /** Why the longest run counts as longer than it measures. */
    List<AllowanceItem> allowanceItems() {
        return complete() ? new AllowanceItems(piping, stage, allowance, runs, chosen, columns).list() : List.of();
    }

    /** The fittings of each section at the size in use, which an installed pipe makes another than the needed one. */
    private void countInUse(SectionSize[] sizes, double[] countedFt) {
        int[] inUse = columns.clone();
        for (int k = 0; k < inUse.length; k++) {
            inUse[k] = sizes[stage.sections().get(k)].used().orElse(columns[k]);
        }
        RunLengths at = new RunLengths(piping, stage, allowance);
        at.measure(chosen, inUse);
        for (int k = 0; k < inUse.length; k++) {
            countedFt[stage.sections().get(k)] = at.ownCountedFt(k);
        }
    }

    private boolean complete() {
        boolean complete = stage.regulator().outlet().isKnown()
                && stage.regulator().allowedDrop().isKnown()
                && !stage.sections().isEmpty();
        for (int s : stage.sections()) {
            complete = complete
                    && piping.measured(s).isPresent()
                    && piping.section(s).material().isKnown();
        }
        return complete;
    }

    /** Raises every size that the run now asks for; says whether any grew. */
    private boolean grow(double runFt) {
        boolean grew = false;
        for (int k = 0; k < chosen.length; k++) {
            int wanted = wanted(k, runFt);
            if (wanted > columns[k]) {
                columns[k] = wanted;
                grew = true;
            }
        }
        return grew;
    }

    /**
     * The column a section needs at a run's length; -1 without a table. Where none will do, the table's largest: it
     * counts no less than any size that could still be got, so that a size taken off the shelf shrinks no other section.
     */
    private int wanted(int k, double runFt) {
        TableChoice.Chosen c = chosen[k];
        if (c.table().isEmpty()) {
            return -1;
        }
        int largest = c.table().get().sizes().size() - 1;
        OptionalInt row = c.table().get().findRow(Length.ofFeet(runFt));
        if (row.isEmpty()) {
            return largest;
        }
        HeatRate load = piping.load(stage.sections().get(k)).known();
        OptionalInt found = smallest(c, row.getAsInt(), load);
        return found.orElse(largest);
    }

    private static OptionalInt smallest(TableChoice.Chosen c, int row, HeatRate load) {
        CapacityTable table = c.table().orElseThrow();
        for (int column : c.columns()) {
            if (table.carries(row, column, load)) {
                return OptionalInt.of(column);
            }
        }
        return OptionalInt.empty();
    }

    private SectionSize size(int k, double runFt) {
        int index = stage.sections().get(k);
        Load load = piping.load(index);
        if (!load.complete()) {
            return SectionSize.unknown();
        }
        TableChoice.Chosen c = chosen[k];
        if (c.table().isEmpty()) {
            return noSize(c.reason().orElseThrow(), c, load);
        }
        CapacityTable table = c.table().get();
        OptionalInt row = table.findRow(Length.ofFeet(runFt));
        if (row.isEmpty()) {
            return noSize(NoSizeReason.RUN_LONGER_THAN_TABLE, c, load);
        }
        HeatRate asked = load.known();
        OptionalInt needed = smallest(c, row.getAsInt(), asked);
        Section section = piping.section(index);
        OptionalInt installed = column(table, section.installedSize());
        OptionalInt raised = column(table, section.chosenSize());
        if (installed.isEmpty() && raised.isEmpty() && needed.isEmpty()) {
            return noSize(NoSizeReason.LOAD_OVER_LARGEST, c, load);
        }
        OptionalInt used = installed.isPresent() ? installed : raised.isPresent() ? raised : needed;
        boolean enough = table.carries(row.getAsInt(), used.getAsInt(), asked);
        SectionStatus status = !enough
                ? SectionStatus.UNDERSIZED
                : installed.isPresent() ? SectionStatus.ADEQUATE : SectionStatus.SIZED;
        return new SectionSize(status, Optional.empty(), c.table(), row, needed, used, load.whole());
    }

    private static OptionalInt column(CapacityTable table, Fact<String> written) {
        Material material = table.material();
        return written.findValue()
                .map(w -> table.findColumn(SizeNames.read(material, w, table.sizes())))
                .orElse(OptionalInt.empty());
    }

    private static SectionSize noSize(NoSizeReason reason, TableChoice.Chosen c, Load load) {
        return new SectionSize(
                SectionStatus.NO_SIZE,
                Optional.of(reason),
                c.table(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                load.whole());
    }
}
