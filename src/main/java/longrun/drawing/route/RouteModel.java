package longrun.drawing.route;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import longrun.finding.Severity;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Setting;
import longrun.review.Review;

/** What is drawn: every section with what hangs on it, tree by tree, each section after the one that feeds it. */
final class RouteModel {

    private final Review review;
    private final Piping piping;
    private final RunWords words;
    private final Map<String, Integer> regulatorById = new HashMap<>();
    private final Map<Integer, List<Integer>> leaving = new HashMap<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<Tree> trees = new ArrayList<>();
    private final Map<Integer, Double> height = new HashMap<>();
    private final Set<String> mustFix = new HashSet<>();

    /**
     * What hangs together.
     *
     * @param regulator the plan's index of the one it starts at, or -1
     * @param atTank whether that regulator stands at the tank
     * @param runs indices, feeders first
     */
    record Tree(int regulator, boolean atTank, List<Integer> runs) {}

    RouteModel(Review review, DrawingUnits units) {
        this.review = review;
        this.piping = review.piping();
        this.words = new RunWords(review, units);
        List<Regulator> regulators = review.plan().regulators();
        for (int r = 0; r < regulators.size(); r++) {
            regulatorById.put(regulators.get(r).id(), r);
        }
        review.findings().stream()
                .filter(f -> f.severity() == Severity.MUST_FIX)
                .forEach(f -> mustFix.add(f.at()));
        for (int i = 0; i < piping.sectionCount(); i++) {
            int regulator = startsAt(i);
            if (regulator >= 0) {
                leaving.computeIfAbsent(regulator, k -> new ArrayList<>()).add(i);
            }
        }
        for (int i = 0; i < piping.sectionCount(); i++) {
            runs.add(run(i));
        }
        trees(regulators);
        trees.forEach(this::heights);
    }

    private void trees(List<Regulator> regulators) {
        for (int r = 0; r < regulators.size(); r++) {
            if (piping.sectionFeeding(r) < 0) {
                boolean tank = regulators.get(r).fedBy().findValue().orElse("").equals("tank");
                trees.add(new Tree(r, tank, below(leaving.getOrDefault(r, List.of()))));
            }
        }
        for (Run run : runs) {
            if (run.above() < 0 && startsAt(run.index()) < 0) {
                trees.add(new Tree(-1, false, below(List.of(run.index()))));
            }
        }
    }

    private List<Integer> below(List<Integer> first) {
        List<Integer> order = new ArrayList<>();
        Deque<Integer> next = new ArrayDeque<>(first);
        while (!next.isEmpty()) {
            int run = next.poll();
            order.add(run);
            next.addAll(piping.children(run));
            runs.get(run)
                    .end()
                    .filter(o -> o.kind() == Outlet.Kind.REGULATOR)
                    .ifPresent(o -> next.addAll(leaving.getOrDefault(o.item(), List.of())));
        }
        return order;
    }

    /** The regulator a section leaves, or -1. */
    int startsAt(int section) {
        return piping.parent(section) >= 0
                ? -1
                : regulatorById.getOrDefault(
                        piping.section(section).from().findValue().orElse(""), -1);
    }

    private Run run(int i) {
        Section s = piping.section(i);
        int regulator = startsAt(i);
        int above = piping.parent(i) >= 0 ? piping.parent(i) : regulator < 0 ? -1 : piping.sectionFeeding(regulator);
        List<Run.Leg> legs = s.legs().findValue().orElse(List.of()).stream()
                .map(l -> new Run.Leg(l.direction(), l.length().feet()))
                .toList();
        Optional<Outlet> end = piping.findOutlet(i);
        return new Run(
                i,
                s.id(),
                above,
                legs.isEmpty() ? List.of(new Run.Leg(Optional.empty(), Double.NaN)) : legs,
                s.setting().findValue(),
                s.material().findValue(),
                words.parts(end),
                end,
                words.endName(end),
                words.endHeight(end),
                words.size(i),
                words.under(i),
                words.endNotes(end),
                mustFix.contains(s.id()),
                end.filter(o -> mustFix.contains(o.id())).isPresent(),
                comesIn(i, regulator));
    }

    private boolean comesIn(int i, int regulator) {
        Section s = piping.section(i);
        boolean inside = s.setting().is(Setting.INDOORS) || s.setting().is(Setting.CONCEALED);
        Optional<Setting> before = piping.parent(i) >= 0
                ? piping.section(piping.parent(i)).setting().findValue()
                : regulator >= 0
                        ? review.plan().regulators().get(regulator).setting().findValue()
                        : Optional.empty();
        boolean passes = s.passes().findValue().orElse(List.of()).stream()
                .anyMatch(p -> p.what().is("outside-wall"));
        return passes
                || inside
                        && before.filter(b -> b == Setting.OUTDOORS || b == Setting.UNDERGROUND)
                                .isPresent();
    }

    /**
     * How far above the start of its pipe a section ends, feet; empty where a leg on the way has no direction or no length.
     */
    OptionalDouble heightFt(Run run) {
        return height.containsKey(run.index()) ? OptionalDouble.of(height.get(run.index())) : OptionalDouble.empty();
    }

    private void heights(Tree tree) {
        for (int r : tree.runs()) {
            Run run = runs.get(r);
            double at = run.above() < 0 ? 0 : height.getOrDefault(run.above(), Double.NaN);
            for (Run.Leg leg : run.legs()) {
                at += leg.way()
                        .map(w -> w == Direction.UP ? leg.feet() : w == Direction.DOWN ? -leg.feet() : 0)
                        .orElse(Double.NaN);
            }
            if (!Double.isNaN(at)) {
                height.put(r, at);
            }
        }
    }

    List<Run> runs() {
        return runs;
    }

    List<Tree> trees() {
        return trees;
    }

    /** The lines lettered at a regulator. */
    List<String> regulatorWords(int regulator) {
        return words.regulator(regulator);
    }

    boolean regulatorMustFix(int regulator) {
        return mustFix.contains(review.plan().regulators().get(regulator).id());
    }

    List<String> tankWords() {
        return words.tank();
    }

    boolean cylinders() {
        return words.cylinders();
    }
}
