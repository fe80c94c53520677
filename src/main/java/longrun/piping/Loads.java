package longrun.piping;

import java.util.List;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.quantity.HeatRate;

/**
 * Connected loads: the sum of the full inputs a section feeds, reserves of capped outlets included (2018 IFGC 402.2).
 * A share for diversity counts only with its written reason, and never brings a section below its largest single input.
 */
final class Loads {

    private final Plan plan;
    private final Load[] sum;
    private final double[] largest;

    private Loads(Plan plan, Load[] sum, double[] largest) {
        this.plan = plan;
        this.sum = sum;
        this.largest = largest;
    }

    /** What one section must carry. */
    Load of(int section) {
        return diversified(sum[section], largest[section]);
    }

    /** Everything a section feeds, before any share for diversity. */
    Load connected(int section) {
        return sum[section];
    }

    /** What several sections that start together must carry. */
    Load of(List<Integer> sections) {
        Load load = Load.NOTHING;
        double most = 0;
        for (int s : sections) {
            load = load.plus(sum[s]);
            most = Math.max(most, largest[s]);
        }
        return sections.isEmpty() ? Load.MISSING : diversified(load, most);
    }

    static Loads of(Plan plan, Forest forest) {
        int[] order = forest.feedersFirst();
        Load[] sum = new Load[order.length];
        double[] largest = new double[order.length];
        for (int k = order.length - 1; k >= 0; k--) {
            int s = order[k];
            Load load = Load.NOTHING;
            for (int child : forest.children(s)) {
                load = load.plus(sum[child]);
                largest[s] = Math.max(largest[s], largest[child]);
            }
            int regulator = forest.regulatorOn(s);
            if (regulator >= 0) {
                load = load.plus(behind(forest, regulator, sum));
                for (int next : forest.sectionsLeaving(regulator)) {
                    largest[s] = Math.max(largest[s], largest[next]);
                }
            }
            Load own = own(plan, forest, s);
            largest[s] = Math.max(largest[s], own.known().btuh());
            sum[s] = load.plus(own);
        }
        return new Loads(plan, sum, largest);
    }

    private static Load behind(Forest forest, int regulator, Load[] sum) {
        if (forest.sectionsLeaving(regulator).isEmpty()) {
            return Load.MISSING; // a regulator that feeds nothing yet
        }
        Load load = Load.NOTHING;
        for (int next : forest.sectionsLeaving(regulator)) {
            load = load.plus(sum[next]);
        }
        return load;
    }

    private static Load own(Plan plan, Forest forest, int s) {
        if (forest.applianceOn(s) >= 0) {
            return plan.appliances()
                    .get(forest.applianceOn(s))
                    .input()
                    .findValue()
                    .map(h -> new Load(h, true))
                    .orElse(Load.MISSING);
        }
        boolean feeds = !forest.children(s).isEmpty() || forest.regulatorOn(s) >= 0;
        return feeds ? Load.NOTHING : reserve(plan.sections().get(s));
    }

    private static Load reserve(Section section) {
        return section.reserve().fold((HeatRate h) -> new Load(h, true), () -> Load.NOTHING, () -> Load.MISSING);
    }

    private Load diversified(Load load, double largestBtuh) {
        return plan.diversity()
                .filter(d -> d.reason().is(r -> !r.isBlank()))
                .flatMap(d -> d.share().findValue())
                .map(share -> new Load(
                        HeatRate.ofBtuh(Math.max(load.known().btuh() * share.fraction(), largestBtuh)),
                        load.complete()))
                .orElse(load);
    }
}
