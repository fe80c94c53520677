package longrun.plan.choice;

/** How lengths of pipe are joined. */
public enum Joint implements Named {
    THREADED,
    FLARED,
    BRAZED,
    SOLDERED,
    COMPRESSION,
    PRESS
}
