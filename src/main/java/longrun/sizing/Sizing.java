package longrun.sizing;

import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.FittingAllowance;
import longrun.plan.choice.PartKind;
import longrun.quantity.Length;

/** Every section of a plan sized, stage by stage. */
public final class Sizing {

    private final Piping piping;
    private final FittingAllowance allowance;
    private final SectionSize[] sections;
    private final StageSize[] stages;
    private final StageSizer[] sizers;
    private final double[] countedFt;
    private final Optional<Sizing> withoutAssumed;

    private Sizing(Piping piping, CapacityTables tables, FittingAllowance allowance) {
        this.piping = piping;
        this.allowance = allowance;
        this.sections = new SectionSize[piping.sectionCount()];
        this.stages = new StageSize[piping.stages().size()];
        this.sizers = new StageSizer[stages.length];
        this.countedFt = new double[sections.length];
        java.util.Arrays.fill(countedFt, Double.NaN);
        TableChoice choice = new TableChoice(piping.plan(), tables);
        for (int s = 0; s < stages.length; s++) {
            sizers[s] = new StageSizer(piping, piping.stages().get(s), allowance, choice);
            stages[s] = sizers[s].into(sections, countedFt);
        }
        this.withoutAssumed = assumesParts()
                ? Optional.of(new Sizing(piping.withoutAssumedParts(), tables, allowance))
                : Optional.empty();
        for (int i = 0; i < sections.length; i++) {
            if (sections[i] == null) {
                sections[i] = SectionSize.unknown(); // hangs on nothing
            }
        }
    }

    private boolean assumesParts() {
        for (int i = 0; i < sections.length; i++) {
            if (!assumedParts(i).isEmpty()) {
                return true;
            }
        }
        return false;
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

    /**
     * What a section's own counted fittings add to its measured length, at the size in use; zero where fittings
     * are not counted, empty where its stage is unknown. Along a run these sum up to the run's allowance: the bends and
     * fittings a run of CSST has free are used up from the regulator on, so each section bears the 1.3 ft of those of
     * its own that come after.
     */
    public Optional<Length> counted(int index) {
        return Double.isNaN(countedFt[index]) ? Optional.empty() : Optional.of(Length.ofFeet(countedFt[index]));
    }

    /** The parts at a section's end that are counted though nobody has entered them. */
    public List<PartKind> assumedParts(int index) {
        return allowance instanceof FittingAllowance.Counted
                ? piping.turns(index).assumed()
                : List.of();
    }

    /** Whether a section's size is a size so far: something that may still come upon its stage is not known. */
    public boolean isProvisional(int index) {
        return piping.isProvisional(index);
    }

    /** The same plan sized without the parts nobody has entered; empty where all that counts is entered. */
    public Optional<Sizing> withoutAssumedParts() {
        return withoutAssumed;
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
