package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.RegulatorKind;

/** Splits the pipes at the regulators (2018 IFGC 402.4.3, hybrid pressure: each part is sized alone). */
final class Stages {

    private Stages() {}

    static List<Stage> of(Plan plan, Forest forest) {
        boolean[] deliversBelow = otherRegulatorBelow(plan, forest);
        List<Stage> out = new ArrayList<>();
        for (int r = 0; r < plan.regulators().size(); r++) {
            Regulator regulator = plan.regulators().get(r);
            List<Integer> sections = new ArrayList<>(forest.sectionsLeaving(r));
            for (int k = 0; k < sections.size(); k++) {
                sections.addAll(forest.children(sections.get(k)));
            }
            List<Outlet> outlets = new ArrayList<>();
            sections.stream().sorted().forEach(s -> forest.findOutlet(s).ifPresent(outlets::add));
            out.add(new Stage(regulator, r, !deliversBelow[r], List.copyOf(sections), List.copyOf(outlets)));
        }
        return List.copyOf(out);
    }

    /** Whether a regulator that is not a line regulator comes after this one: then this is not yet the point of delivery. */
    private static boolean[] otherRegulatorBelow(Plan plan, Forest forest) {
        boolean[] below = new boolean[plan.regulators().size()];
        int[] order = forest.feedersFirst();
        boolean[] sectionHas = new boolean[order.length];
        for (int k = order.length - 1; k >= 0; k--) {
            int section = order[k];
            boolean has = false;
            for (int child : forest.children(section)) {
                has |= sectionHas[child];
            }
            int r = forest.regulatorOn(section);
            if (r >= 0) {
                for (int next : forest.sectionsLeaving(r)) {
                    below[r] |= sectionHas[next];
                }
                has |= below[r] || !plan.regulators().get(r).kind().is(RegulatorKind.LINE);
            }
            sectionHas[section] = has;
        }
        for (int r = 0; r < below.length; r++) {
            for (int next : forest.sectionsLeaving(r)) {
                below[r] |= sectionHas[next];
            }
        }
        return below;
    }
}
