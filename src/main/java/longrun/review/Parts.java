package longrun.review;

/** How much of a plan is worked out. */
public enum Parts {
    /** Everything. */
    ALL,
    /** Pipes and what concerns them; the year and hot water are left out. */
    PIPING
}
