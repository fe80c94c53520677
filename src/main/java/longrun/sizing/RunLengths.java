package longrun.sizing;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.capacity.FittingLengths;
import longrun.capacity.Turn;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.piping.Turns;
import longrun.plan.FittingAllowance;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;

/**
 * The length of every run of a stage: measured, and what the allowance adds. Equivalent lengths by 2018 IRC Appendix A
 * Table A.2.2; CSST by its tables' footnote (four bends and two fittings are free on a run, then 1.3 ft each).
 */
final class RunLengths {

    /** The share inside the Canadian tables, for legs whose turns are not known (CSA B149.1 Annex B). */
    static final double UNDIRECTED_SHARE = 0.20;

    private final Piping piping;
    private final Stage stage;
    private final FittingAllowance allowance;
    private final FittingFeet feet = new FittingFeet();
    private final Map<Integer, Integer> place = new HashMap<>();
    private final double[] measured;
    private final double[] added;
    private final int[] bends;
    private final int[] fittings;
    private double longestFt;
    private double longestMeasuredFt;
    private Optional<Outlet> longestTo = Optional.empty();

    RunLengths(Piping piping, Stage stage, FittingAllowance allowance) {
        this.piping = piping;
        this.stage = stage;
        this.allowance = allowance;
        int n = stage.sections().size();
        measured = new double[n];
        added = new double[n];
        bends = new int[n];
        fittings = new int[n];
        for (int k = 0; k < n; k++) {
            place.put(stage.sections().get(k), k);
        }
    }

    double longestFt() {
        return longestFt;
    }

    double longestMeasuredFt() {
        return longestMeasuredFt;
    }

    Optional<Outlet> longestTo() {
        return longestTo;
    }

    /** Works out every run with the given sizes; a size of -1 is not known yet and its fittings add nothing. */
    void measure(TableChoice.Chosen[] chosen, int[] columns) {
        for (int k = 0; k < measured.length; k++) {
            int section = stage.sections().get(k);
            int above = above(section);
            measured[k] = piping.measured(section).orElseThrow().feet() + (above < 0 ? 0 : measured[above]);
            added[k] = above < 0 ? 0 : added[above];
            bends[k] = above < 0 ? 0 : bends[above];
            fittings[k] = above < 0 ? 0 : fittings[above];
            if (allowance instanceof FittingAllowance.Counted) {
                count(k, section, above, chosen, columns);
            }
        }
        longest();
    }

    private void count(int k, int section, int above, TableChoice.Chosen[] chosen, int[] columns) {
        Turns t = piping.turns(section);
        added[k] += UNDIRECTED_SHARE * t.undirected().feet();
        if (piping.section(section).material().is(Material.CSST)) {
            bends[k] += t.turns();
            boolean passesTee = t.tee() != Turns.Tee.NO_TEE;
            fittings[k] += 2 + (passesTee ? 1 : 0) + t.traps() + t.shutoffs() + t.listedParts();
            return;
        }
        Optional<CapacityTable> table = chosen[k].table();
        if (table.isEmpty() || columns[k] < 0) {
            return;
        }
        Material material = table.get().material();
        String size = table.get().sizes().get(columns[k]);
        Turn turn = material.bends() ? Turn.BEND : Turn.ELBOW_90;
        added[k] += t.turns() * feet.of(turn, material, size)
                + (t.shutoffs() + t.elbows90()) * feet.of(Turn.ELBOW_90, material, size)
                + t.elbows45() * feet.of(Turn.ELBOW_45, material, size)
                + (t.traps() + t.teeBranches()) * feet.of(Turn.TEE_BRANCH, material, size);
        if (t.tee() == Turns.Tee.BRANCH) {
            added[k] += branch(k, above, chosen, columns);
        }
    }

    /** A tee's branch at the larger bore of what it joins. */
    double branch(int k, int above, TableChoice.Chosen[] chosen, int[] columns) {
        int larger = k;
        if (above >= 0 && bore(above, chosen, columns) > bore(k, chosen, columns)) {
            larger = above;
        }
        CapacityTable table = chosen[larger].table().orElseThrow();
        return feet.of(Turn.TEE_BRANCH, table.material(), table.sizes().get(columns[larger]));
    }

    private static double bore(int k, TableChoice.Chosen[] chosen, int[] columns) {
        Optional<CapacityTable> table = chosen[k].table();
        return table.isEmpty() || columns[k] < 0
                ? 0
                : table.get().bore(columns[k]).map(Bore::inches).orElse(0.0);
    }

    private void longest() {
        longestFt = -1;
        longestTo = Optional.empty();
        for (Outlet outlet : stage.outlets()) {
            int k = placeOf(outlet.section());
            double run = run(k);
            int farther = Long.compare(Math.round(run * 1000), Math.round(longestFt * 1000));
            boolean tie = farther == 0
                    && longestTo.isPresent()
                    && outlet.id().compareTo(longestTo.get().id()) < 0;
            if (farther > 0 || tie) {
                longestFt = run;
                longestMeasuredFt = measured[k];
                longestTo = Optional.of(outlet);
            }
        }
    }

    /** The length of the run that ends with a section, by its place in the stage. */
    double run(int k) {
        if (allowance instanceof FittingAllowance.Share share) {
            return measured[k] * (1 + share.share().fraction());
        }
        return measured[k] + counted(k);
    }

    /** What a section's own turns and fittings add where they are counted; the sections of a run sum up to the run's. */
    double ownCountedFt(int k) {
        int parent = piping.parent(stage.sections().get(k));
        return counted(k) - (parent < 0 ? 0 : counted(placeOf(parent)));
    }

    private double counted(int k) {
        int over = Math.max(0, bends[k] - FittingLengths.CSST_FREE_BENDS)
                + Math.max(0, fittings[k] - FittingLengths.CSST_FREE_FITTINGS);
        return added[k] + over * FittingLengths.CSST_EACH.feet();
    }

    /** Bends of a run of CSST, by the place of its last section. */
    int bends(int k) {
        return bends[k];
    }

    /** Fittings of a run of CSST, by the place of its last section. */
    int fittings(int k) {
        return fittings[k];
    }

    /** A section's place in the stage, or -1. */
    int placeOf(int section) {
        return place.getOrDefault(section, -1);
    }

    /** The place of the section before one, or -1. */
    int above(int section) {
        return piping.parent(section) < 0 ? -1 : placeOf(piping.parent(section));
    }
}
