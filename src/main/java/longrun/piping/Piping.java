package longrun.piping;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.plan.ApplianceNames;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.quantity.Length;

/**
 * A plan's pipes, resolved. Sections are known by their index in the plan; every list keeps the plan's order. Built
 * without recursion, so that its depth has no limit.
 */
public final class Piping {

    private final Plan plan;
    private final Forest forest;
    private final List<Stage> stages;
    private final int[] stageOf;
    private final List<Optional<Length>> measured;
    private final Loads loads;
    private final Turns[] turns;
    private final Loose loose;
    private final int[] firstAssumed;
    private final ApplianceNames names;

    private Piping(Plan plan) {
        this.plan = plan;
        this.forest = new Forest(plan);
        this.stages = Stages.of(plan, forest);
        this.stageOf = new int[plan.sections().size()];
        java.util.Arrays.fill(stageOf, -1);
        for (int s = 0; s < stages.size(); s++) {
            for (int section : stages.get(s).sections()) {
                stageOf[section] = s;
            }
        }
        this.measured = plan.sections().stream().map(Turning::measured).toList();
        this.loads = Loads.of(plan, forest);
        this.turns = Turning.of(plan, forest);
        this.loose = new Loose(plan, forest, stages, stageOf);
        this.firstAssumed = firstAssumed(plan, stages.size(), stageOf);
        this.names = ApplianceNames.of(plan);
    }

    private Piping(Piping all, Turns[] turns) {
        this.plan = all.plan;
        this.forest = all.forest;
        this.stages = all.stages;
        this.stageOf = all.stageOf;
        this.measured = all.measured;
        this.loads = all.loads;
        this.turns = turns;
        this.loose = all.loose;
        this.firstAssumed = all.firstAssumed;
        this.names = all.names;
    }

    /** Looked through once: it is asked for with every section. */
    private static int[] firstAssumed(Plan plan, int stages, int[] stageOf) {
        int[] first = new int[stages];
        java.util.Arrays.fill(first, -1);
        for (int i = 0; i < stageOf.length; i++) {
            if (stageOf[i] >= 0
                    && first[stageOf[i]] < 0
                    && plan.sections().get(i).isAssumed()) {
                first[stageOf[i]] = i;
            }
        }
        return first;
    }

    public static Piping of(Plan plan) {
        return new Piping(plan);
    }

    public Plan plan() {
        return plan;
    }

    /** What its appliances are called. */
    public ApplianceNames names() {
        return names;
    }

    /** One a regulator, in the plan's order. */
    public List<Stage> stages() {
        return stages;
    }

    public int sectionCount() {
        return stageOf.length;
    }

    public Section section(int index) {
        return plan.sections().get(index);
    }

    /** The stage a section belongs to; none for a section that hangs on nothing. */
    public Optional<Stage> findStage(int section) {
        return stageOf[section] < 0 ? Optional.empty() : Optional.of(stages.get(stageOf[section]));
    }

    /** Index of a section's stage in {@link #stages()}, or -1. */
    public int stageIndex(int section) {
        return stageOf[section];
    }

    /** Index of the section another leaves, or -1 where it leaves a regulator or nothing. */
    public int parent(int section) {
        return forest.parent(section);
    }

    /** Indices of the sections that leave a section. */
    public List<Integer> children(int section) {
        return forest.children(section);
    }

    /** What hangs on a section's end: an appliance, a regulator, a cap, nothing; empty where other sections leave it. */
    public Optional<Outlet> findOutlet(int section) {
        return forest.findOutlet(section);
    }

    public OptionalInt findSection(String id) {
        return forest.findSection(id);
    }

    /** The index of the stage whose pipe ends at a regulator, or -1 where that is the tank or not said. */
    public int stageFeeding(int regulatorIndex) {
        int section = forest.sectionFeeding(regulatorIndex);
        return section < 0 ? -1 : stageOf[section];
    }

    /** Index of the section a regulator hangs on, or -1. */
    public int sectionFeeding(int regulatorIndex) {
        return forest.sectionFeeding(regulatorIndex);
    }

    /** What serves what, by the ids of the plan. */
    public Network network() {
        return new Network(this, forest);
    }

    /** As it measures, or empty where the legs are not entered. */
    public Optional<Length> measured(int section) {
        return measured.get(section);
    }

    /** What a section must carry, with everything it feeds firing at once. */
    public Load load(int section) {
        return loads.of(section);
    }

    /** Everything a section feeds, before any share for diversity. */
    public Load connected(int section) {
        return loads.connected(section);
    }

    public Turns turns(int section) {
        return turns[section];
    }

    /** Whether the parts at a section's end are entered and some of them are taken as usual, seen by nobody. */
    public boolean endsInPartsNotSeen(int section) {
        int appliance = forest.applianceOn(section);
        return appliance >= 0 && plan.appliances().get(appliance).hasPartsNotSeen();
    }

    /** The first section of a stage, in the plan's order, that is taken as usual and nobody has looked at. */
    public OptionalInt findAssumed(int stage) {
        return firstAssumed[stage] < 0 ? OptionalInt.empty() : OptionalInt.of(firstAssumed[stage]);
    }

    /** The same pipes without the parts at their ends that nobody has entered or looked at, to show what those change. */
    public Piping withoutAssumedParts() {
        Turns[] entered = new Turns[turns.length];
        for (int i = 0; i < entered.length; i++) {
            entered[i] = turns[i].entered();
        }
        return new Piping(this, entered);
    }

    /**
     * Whether every load behind a regulator is known, nothing in the plan hangs on nothing and none of its sections is
     * taken as usual without a look; else what is sized is sized so far.
     *
     * @param stage index in {@link #stages()}
     */
    public boolean isComplete(int stage) {
        return load(stages.get(stage)).complete()
                && loose.field(stage).isEmpty()
                && findAssumed(stage).isEmpty();
    }

    /** The field of an entry that hangs on nothing and may still come upon a stage, by its index. */
    public Optional<String> findLoose(int stage) {
        return loose.field(stage);
    }

    /** Whether something in the plan hangs on nothing, so that its load is in no sum. */
    public boolean hangsLoose() {
        return !loose.isNone();
    }

    /** Whether a section belongs to a stage that is not complete, so that its size is a size so far. */
    public boolean isProvisional(int section) {
        return stageOf[section] >= 0 && !isComplete(stageOf[section]);
    }

    /** The load of everything that a stage's sections feed. */
    public Load load(Stage stage) {
        return loads.of(forest.sectionsLeaving(stage.regulatorIndex()));
    }
}
