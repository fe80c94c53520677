package longrun.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.FittingLengths;
import longrun.capacity.Turn;
import longrun.origin.Confidence;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.piping.Turns;
import longrun.plan.FittingAllowance;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.quantity.Length;
import longrun.quantity.Show;

/** Why the longest run of a stage counts as longer than it measures. */
final class AllowanceItems {

    /** Said of a part that is counted because the rules will ask for it. */
    private static final String NOT_ENTERED = ", not entered: counted as the rules ask for it";

    private static final String NOT_SEEN = ", assumed, not seen";

    private final Piping piping;
    private final Stage stage;
    private final FittingAllowance allowance;
    private final RunLengths runs;
    private final TableChoice.Chosen[] chosen;
    private final int[] columns;
    private final FittingFeet feet = new FittingFeet();
    private final List<AllowanceItem> out = new ArrayList<>();

    AllowanceItems(
            Piping piping,
            Stage stage,
            FittingAllowance allowance,
            RunLengths runs,
            TableChoice.Chosen[] chosen,
            int[] columns) {
        this.piping = piping;
        this.stage = stage;
        this.allowance = allowance;
        this.runs = runs;
        this.chosen = chosen;
        this.columns = columns;
    }

    /** One by one, section by section from the regulator. */
    List<AllowanceItem> list() {
        if (runs.longestTo().isEmpty() || allowance instanceof FittingAllowance.None) {
            return out;
        }
        if (allowance instanceof FittingAllowance.Share share) {
            double percent = share.share().percent();
            out.add(new AllowanceItem(
                    Optional.empty(),
                    Show.plain(percent) + " % of the measured length",
                    Length.ofFeet(runs.longestMeasuredFt() * share.share().fraction()),
                    "the share entered as fitting allowance",
                    Confidence.OWN));
            return out;
        }
        List<Integer> path = new ArrayList<>();
        int end = runs.longestTo().get().section();
        for (int s = end; s >= 0; s = piping.parent(s)) {
            path.add(0, runs.placeOf(s));
        }
        path.forEach(this::section);
        int last = path.get(path.size() - 1);
        csst(runs.bends(last), "bends", FittingLengths.CSST_FREE_BENDS);
        boolean assumed = piping.section(end).material().is(Material.CSST)
                && !piping.turns(end).assumed().isEmpty();
        csst(
                runs.fittings(last),
                "fittings"
                        + (assumed
                                ? " (with the parts at its end, "
                                        + (piping.endsInPartsNotSeen(end) ? "assumed, not seen)" : "not entered)")
                                : ""),
                FittingLengths.CSST_FREE_FITTINGS);
        return out;
    }

    private void csst(int count, String what, int free) {
        if (count > free) {
            out.add(new AllowanceItem(
                    Optional.empty(),
                    "CSST: " + (count - free) + " " + what + " beyond " + free,
                    Length.ofFeet((count - free) * FittingLengths.CSST_EACH.feet()),
                    "L = 1.3 n ft, 2018 International Residential Code, Table G2413.4(16), footnote",
                    Confidence.MEMORY));
        }
    }

    private void section(int k) {
        int section = stage.sections().get(k);
        String id = piping.section(section).id();
        Turns t = piping.turns(section);
        add(
                id,
                "a fifth more, turns not described",
                RunLengths.UNDIRECTED_SHARE * t.undirected().feet(),
                "CSA B149.1, Annex B",
                Confidence.SECONDARY);
        if (piping.section(section).material().is(Material.CSST)
                || chosen[k].table().isEmpty()
                || columns[k] < 0) {
            return;
        }
        Material material = chosen[k].table().get().material();
        String size = chosen[k].table().get().sizes().get(columns[k]);
        String source = FittingLengths.SOURCE + (material == Material.STEEL ? ", size " + size : ", L = k d / 0.36");
        Confidence sure = FittingLengths.confidence(material);
        Turn turn = material.bends() ? Turn.BEND : Turn.ELBOW_90;
        String turned = material.bends() ? " bends" : " elbows";
        add(id, t.turns() + turned, t.turns() * feet.of(turn, material, size), source, sure);
        if (t.tee() == Turns.Tee.BRANCH) {
            add(
                    id,
                    "branch of a tee",
                    runs.branch(k, runs.above(section), chosen, columns),
                    FittingLengths.SOURCE + ", at the larger bore",
                    sure);
        }
        add(
                id,
                t.elbows90() + " elbows or valves listed",
                t.elbows90() * feet.of(Turn.ELBOW_90, material, size),
                source,
                sure);
        add(
                id,
                t.elbows45() + " 45 degree elbows listed",
                t.elbows45() * feet.of(Turn.ELBOW_45, material, size),
                source,
                sure);
        add(
                id,
                t.teeBranches() + " tee branches listed",
                t.teeBranches() * feet.of(Turn.TEE_BRANCH, material, size),
                source,
                sure);
        String counted = piping.endsInPartsNotSeen(section) ? NOT_SEEN : NOT_ENTERED;
        String shutoff = t.assumed().contains(PartKind.SHUTOFF) ? counted : "";
        String trap = t.assumed().contains(PartKind.SEDIMENT_TRAP) ? counted : "";
        add(id, "shutoff as an elbow" + shutoff, t.shutoffs() * feet.of(Turn.ELBOW_90, material, size), source, sure);
        add(
                id,
                "sediment trap as a tee's branch" + trap,
                t.traps() * feet.of(Turn.TEE_BRANCH, material, size),
                source,
                sure);
    }

    private void add(String section, String part, double feet, String how, Confidence sure) {
        if (feet > 0) {
            out.add(new AllowanceItem(Optional.of(section), part, Length.ofFeet(feet), how, sure));
        }
    }
}
