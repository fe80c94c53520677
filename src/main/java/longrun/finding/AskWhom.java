package longrun.finding;

import longrun.plan.choice.Named;

/** Who can answer an open question. */
public enum AskWhom implements Named {
    SUPPLIER,
    FITTER,
    INSPECTOR,
    RATING_PLATE,
    OWNER
}
