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
     * Whether supplier, fitter or inspector must be asked. A rating plate is read by the owner, as a tape measure is.
     */
    public boolean isForSomeoneElse() {
        return this == SUPPLIER || this == FITTER || this == INSPECTOR;
    }
}
