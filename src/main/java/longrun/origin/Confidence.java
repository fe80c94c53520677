package longrun.origin;

import longrun.plan.choice.Named;

/** How sure a published figure or a threshold is. */
public enum Confidence implements Named {
    /** Read in a code, a standard or a regulation. */
    PRINT,
    /** Computed by the code's equation. */
    COMPUTED,
    /** Read on a page that repeats the code. */
    SECONDARY,
    /** Held from memory: binding until the authority says otherwise. */
    MEMORY,
    /** From a table the person loaded. */
    OWN
}
