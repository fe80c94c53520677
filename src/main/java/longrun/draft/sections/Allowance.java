package longrun.draft.sections;

import java.util.Optional;
import longrun.plan.FittingAllowance;
import longrun.quantity.Measure;

/** The fitting switch: how elbows and tees add to the measured length. */
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

    /** As it is sized with. */
    public FittingAllowance inPlan() {
        return switch (this) {
            case NONE -> new FittingAllowance.None();
            case FIFTH -> new FittingAllowance.Share(Measure.RATIO.read(written));
            case COUNTED -> new FittingAllowance.Counted();
        };
    }

    /** As a plan writes it. */
    public String written() {
        return written;
    }

    public String title() {
        return title;
    }

    /** What a plan writes so; nothing written is counted, and what is none of the three is empty. */
    public static Optional<Allowance> find(String written) {
        for (Allowance a : values()) {
            if (a.written.equals(written.strip())) {
                return Optional.of(a);
            }
        }
        return written.isBlank() ? Optional.of(COUNTED) : Optional.empty();
    }

    public static Allowance of(String written) {
        return find(written).orElse(COUNTED);
    }
}
