package longrun.finding;

import longrun.plan.choice.Named;

/** Who can answer an open question. */
public enum AskWhom implements Named {
    SUPPLIER,
    FITTER,
    INSPECTOR,
    RATING_PLATE,
    OWNER;

    /**
     * Whether the question is taken along to somebody else; a rating plate is read by whoever stands before it, as the
     * tape is.
     */
    public boolean isTakenAlong() {
        return this == SUPPLIER || this == FITTER || this == INSPECTOR;
    }
}
