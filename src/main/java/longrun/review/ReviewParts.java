package longrun.review;

/** Which parts of a review are worked out; the service's query parameter {@code parts}. */
public enum ReviewParts {
    /** Everything. */
    ALL,
    /** Sizes, pressures and rules of the piping; tank, hot water and the year are left out. */
    PIPING
}
