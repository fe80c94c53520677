package longrun.finding;

import longrun.plan.choice.Named;

/** What happens if a finding is true and ignored. */
public enum Severity implements Named {
    /** Could burn, explode, poison or scald, or will certainly fail inspection. */
    MUST_FIX,
    /** Look at it before the work goes on. */
    CAUTION,
    /** A question, or something to know. */
    NOTE
}
