package longrun.draft.sections;

import java.util.Optional;
import longrun.plan.FittingAllowance;
import longrun.quantity.Measure;

/** The fitting allowance: how fittings add to the measured length. */
public enum Allowance {
    NONE("none", "Measured length alone"),
    FIFTH("20 %", "A fifth more"),
    COUNTED("counted", "Counted");

    private final String written;
    private final String title;

    Allowance(String written, String title) {
        this.written = written;
        this.title = title;
    }

    /** The allowance for sizing. */
    public FittingAllowance inPlan() {
        return switch (this) {
            case NONE -> new FittingAllowance.None();
            case FIFTH -> new FittingAllowance.Share(Measure.RATIO.read(written));
            case COUNTED -> new FittingAllowance.Counted();
        };
    }

    /** Its name in a plan. */
    public String written() {
        return written;
    }

    /** Its name in the choice. */
    public String title() {
        return title;
    }

    /** The allowance by its name in a plan; a blank means counted, and another text is empty. */
    public static Optional<Allowance> find(String written) {
        for (Allowance a : values()) {
            if (a.written.equals(written.strip())) {
                return Optional.of(a);
            }
        }
        return written.isBlank() ? Optional.of(COUNTED) : Optional.empty();
    }

    /** The allowance by its name in a plan; another text means counted. */
    public static Allowance of(String written) {
        return find(written).orElse(COUNTED);
    }
}
