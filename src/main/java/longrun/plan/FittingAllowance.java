package longrun.plan;

import longrun.quantity.Ratio;

/** How fittings add to the measured length of a run. */
public sealed interface FittingAllowance {

    /** Nothing is added. */
    record None() implements FittingAllowance {}

    /** A share of every material's measured length. */
    record Share(Ratio share) implements FittingAllowance {}

    /** Each elbow, bend, tee and valve is counted; the default. */
    record Counted() implements FittingAllowance {}
}
