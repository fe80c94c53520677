package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Plan;

/**
 * What in a plan hangs on nothing: a section without what it leaves, an appliance without a section, a regulator that
 * is not said to be at the tank or on a section. Its load is in no sum, and no size it may still come upon is final.
 */
final class Loose {

    private final List<String> anywhere = new ArrayList<>();
    private final int[] root;
    private final List<Integer> regulators = new ArrayList<>();

    Loose(Plan plan, Forest forest, List<Stage> stages, int[] stageOf) {
        for (int i = 0; i < plan.sections().size(); i++) {
            if (!plan.sections().get(i).from().isKnown()) {
                anywhere.add("/sections/" + i + "/from");
            }
        }
        for (int i = 0; i < plan.appliances().size(); i++) {
            if (!plan.appliances().get(i).fedBy().isKnown()) {
                anywhere.add("/appliances/" + i + "/fedBy");
            }
        }
        root = new int[stages.size()];
        for (int r = 0; r < root.length; r++) {
            root[r] = root(r, forest, stageOf);
            if (!plan.regulators().get(r).fedBy().isKnown()) {
                regulators.add(r);
            }
        }
    }

    private static int root(int stage, Forest forest, int[] stageOf) {
        int at = stage;
        int section = forest.sectionFeeding(at);
        while (section >= 0 && stageOf[section] >= 0) {
            at = stageOf[section];
            section = forest.sectionFeeding(at);
        }
        return at;
    }

    /**
     * The field that hangs something, which may still come upon a stage; empty where nothing may. A regulator cannot
     * come upon what it feeds itself.
     */
    Optional<String> field(int stage) {
        if (!anywhere.isEmpty()) {
            return Optional.of(anywhere.get(0));
        }
        return regulators.stream().filter(r -> r != root[stage]).findFirst().map(r -> "/regulators/" + r + "/fedBy");
    }

    /** Whether nothing hangs on nothing. */
    boolean isNone() {
        boolean regulator = false;
        for (int s = 0; s < root.length; s++) {
            regulator |= field(s).isPresent();
        }
        return anywhere.isEmpty() && !regulator;
    }
}
