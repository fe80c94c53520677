package longrun.piping;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Leg;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.plan.choice.Direction;
import longrun.plan.choice.PipeFitting;
import longrun.quantity.Length;

/** Counts the turns of each section from its legs, as a fitter would along the pipe. */
final class Turning {

    private Turning() {}

    /** The sum of a section's legs; empty where none is entered. */
    static Optional<Length> measured(Section section) {
        List<Leg> legs = section.legs().findValue().orElse(List.of());
        double feet = 0;
        for (Leg leg : legs) {
            feet += leg.length().feet();
        }
        return legs.isEmpty() ? Optional.empty() : Optional.of(Length.ofFeet(feet));
    }

    static Turns[] of(Plan plan, Forest forest) {
        Turns[] out = new Turns[plan.sections().size()];
        int[] straightOn = straightOn(plan, forest);
        for (int i = 0; i < out.length; i++) {
            out[i] = of(plan, forest, i, straightOn);
        }
        return out;
    }

    private static Turns of(Plan plan, Forest forest, int i, int[] straightOn) {
        Section section = plan.sections().get(i);
        List<Leg> legs = section.legs().findValue().orElse(List.of());
        int turns = 0;
        double undirected = 0;
        Optional<Direction> before =
                forest.leavingWith(i) == 1 ? lastDirection(plan, forest.parent(i)) : Optional.empty();
        for (Leg leg : legs) {
            if (before.isPresent() && leg.direction().isPresent() && !before.equals(leg.direction())) {
                turns++;
            }
            undirected += leg.direction().isPresent() ? 0 : leg.length().feet();
            before = leg.direction();
        }
        Map<PipeFitting, Integer> listed = section.fittings().findValue().orElse(Map.of());
        boolean looked = section.fittings().isKnown() || section.fittings().isNone();
        EndParts end = EndParts.of(
                forest.applianceOn(i) < 0
                        ? Optional.empty()
                        : Optional.of(plan.appliances().get(forest.applianceOn(i))));
        return new Turns(
                turns,
                tee(plan, forest, i, straightOn),
                looked ? Length.ZERO : Length.ofFeet(undirected),
                end.traps(),
                end.shutoffs(),
                end.assumed(),
                listed.getOrDefault(PipeFitting.ELBOW_90, 0) + listed.getOrDefault(PipeFitting.VALVE, 0),
                listed.getOrDefault(PipeFitting.ELBOW_45, 0),
                listed.getOrDefault(PipeFitting.TEE_BRANCH, 0));
    }

    private static Turns.Tee tee(Plan plan, Forest forest, int i, int[] straightOn) {
        if (forest.leavingWith(i) < 2) {
            return Turns.Tee.NO_TEE;
        }
        Optional<Direction> arriving = lastDirection(plan, forest.parent(i));
        if (arriving.isEmpty() || !arriving.equals(firstDirection(plan, i))) {
            return Turns.Tee.BRANCH;
        }
        // only one can go straight on; where two claim it, both are taken through the branch
        return straightOn[forest.parent(i)] == 1 ? Turns.Tee.RUN : Turns.Tee.BRANCH;
    }

    /** For each section, how many of those that leave it go straight on. */
    private static int[] straightOn(Plan plan, Forest forest) {
        int[] out = new int[plan.sections().size()];
        for (int i = 0; i < out.length; i++) {
            int parent = forest.parent(i);
            if (parent >= 0) {
                Optional<Direction> arriving = lastDirection(plan, parent);
                out[parent] += arriving.isPresent() && arriving.equals(firstDirection(plan, i)) ? 1 : 0;
            }
        }
        return out;
    }

    private static Optional<Direction> firstDirection(Plan plan, int section) {
        List<Leg> legs = plan.sections().get(section).legs().findValue().orElse(List.of());
        return legs.isEmpty() ? Optional.empty() : legs.get(0).direction();
    }

    private static Optional<Direction> lastDirection(Plan plan, int section) {
        if (section < 0) {
            return Optional.empty();
        }
        List<Leg> legs = plan.sections().get(section).legs().findValue().orElse(List.of());
        return legs.isEmpty() ? Optional.empty() : legs.get(legs.size() - 1).direction();
    }
}
