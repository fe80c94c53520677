package longrun.sizing;

import java.util.List;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.FittingAllowance;

/** Every section of a plan sized, stage by stage. */
public final class Sizing {

    private final Piping piping;
    private final FittingAllowance allowance;
    private final SectionSize[] sections;
    private final StageSize[] stages;
    private final StageSizer[] sizers;

    private Sizing(Piping piping, CapacityTables tables, FittingAllowance allowance) {
        this.piping = piping;
        this.allowance = allowance;
        this.sections = new SectionSize[piping.sectionCount()];
        this.stages = new StageSize[piping.stages().size()];
        this.sizers = new StageSizer[stages.length];
        TableChoice choice = new TableChoice(piping.plan(), tables);
        for (int s = 0; s < stages.length; s++) {
            sizers[s] = new StageSizer(piping, piping.stages().get(s), allowance, choice);
            stages[s] = sizers[s].into(sections);
        }
        for (int i = 0; i < sections.length; i++) {
            if (sections[i] == null) {
                sections[i] = SectionSize.unknown(); // hangs on nothing
            }
        }
    }

    /** Sizes with the plan's own fitting allowance, counted where none is entered. */
    public static Sizing of(Piping piping, CapacityTables tables) {
        return of(piping, tables, allowance(piping));
    }

    /** Sizes with another fitting allowance, to show what it changes. */
    public static Sizing of(Piping piping, CapacityTables tables, FittingAllowance allowance) {
        return new Sizing(piping, tables, allowance);
    }

    private static FittingAllowance allowance(Piping piping) {
        return piping.plan().fittingAllowance().findValue().orElse(new FittingAllowance.Counted());
    }

    public Piping piping() {
        return piping;
    }

    public FittingAllowance allowance() {
        return allowance;
    }

    /** A section's size, by the section's index in the plan. */
    public SectionSize section(int index) {
        return sections[index];
    }

    /** A stage's length, by the stage's index in {@link Piping#stages()}. */
    public StageSize stage(int index) {
        return stages[index];
    }

    /** Why a stage's longest run counts as longer than it measures; the items add up to its allowance. */
    public List<AllowanceItem> allowanceItems(int stage) {
        return sizers[stage].allowanceItems();
    }
}
