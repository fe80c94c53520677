package longrun.piping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;

/** Splits the pipes at the regulators (2018 IFGC 402.4.3, hybrid pressure: each part is sized alone). */
final class Stages {

    private Stages() {}

    static List<Stage> of(Plan plan, Forest forest) {
        Side[] sides = sides(plan, forest);
        List<Stage> out = new ArrayList<>();
        for (int r = 0; r < plan.regulators().size(); r++) {
            Regulator regulator = plan.regulators().get(r);
            List<Integer> sections = new ArrayList<>(forest.sectionsLeaving(r));
            for (int k = 0; k < sections.size(); k++) {
                sections.addAll(forest.children(sections.get(k)));
            }
            List<Outlet> outlets = new ArrayList<>();
            sections.stream().sorted().forEach(s -> forest.findOutlet(s).ifPresent(outlets::add));
            out.add(new Stage(regulator, r, sides[r], List.copyOf(sections), List.copyOf(outlets)));
        }
        return List.copyOf(out);
    }

    /** What is known of the regulators further on. */
    private enum Below {
        ONLY_LINE,
        /** One of them has no kind: it may be the point of delivery. */
        KIND_MISSING,
        DELIVERS;

        Below and(Below other) {
            return compareTo(other) < 0 ? other : this;
        }
    }

    /** The side of each regulator's stage; a regulator whose own kind is missing tells none. */
    private static Side[] sides(Plan plan, Forest forest) {
        Below[] below = below(plan, forest);
        Side[] out = new Side[below.length];
        for (int r = 0; r < below.length; r++) {
            out[r] = !plan.regulators().get(r).kind().isKnown() || below[r] == Below.KIND_MISSING
                    ? Side.UNKNOWN
                    : below[r] == Below.DELIVERS ? Side.TANK_SIDE : Side.HOUSE_SIDE;
        }
        return out;
    }

    private static Below[] below(Plan plan, Forest forest) {
        Below[] below = new Below[plan.regulators().size()];
        int[] order = forest.feedersFirst();
        Below[] at = new Below[order.length];
        Arrays.fill(at, Below.ONLY_LINE);
        for (int k = order.length - 1; k >= 0; k--) {
            int section = order[k];
            for (int child : forest.children(section)) {
                at[section] = at[section].and(at[child]);
            }
            int r = forest.regulatorOn(section);
            if (r >= 0) {
                Fact<RegulatorKind> kind = plan.regulators().get(r).kind();
                Below own = !kind.isKnown()
                        ? Below.KIND_MISSING
                        : kind.is(RegulatorKind.LINE) ? Below.ONLY_LINE : Below.DELIVERS;
                at[section] = at[section].and(own).and(leaving(forest, r, at));
            }
        }
        for (int r = 0; r < below.length; r++) {
            below[r] = leaving(forest, r, at);
        }
        return below;
    }

    private static Below leaving(Forest forest, int regulator, Below[] at) {
        Below out = Below.ONLY_LINE;
        for (int next : forest.sectionsLeaving(regulator)) {
            out = out.and(at[next]);
        }
        return out;
    }
}
