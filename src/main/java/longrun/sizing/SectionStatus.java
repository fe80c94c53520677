package longrun.sizing;

import longrun.plan.choice.Named;

/** What came of sizing one section. */
public enum SectionStatus implements Named {
    /** A size from the table, or a larger one a person chose. */
    SIZED,
    /** The size in place carries the load. */
    ADEQUATE,
    /** The size in place, or the one chosen, does not carry the load. */
    UNDERSIZED,
    /** No size of the table carries the load at this length, or there is no table. */
    NO_SIZE,
    /** Something is missing. */
    UNKNOWN
}
