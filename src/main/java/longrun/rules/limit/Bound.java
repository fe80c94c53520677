package longrun.rules.limit;

import longrun.plan.choice.Named;

/** How a threshold binds. */
public enum Bound implements Named {
    /** At least the limit. */
    LEAST,
    /** At most the limit. */
    MOST,
    /** Some length above nothing. */
    ANY,
    /** A fact that is so or is not. */
    YES,
    /** This code does not ask it. */
    NONE
}
