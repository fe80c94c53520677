package longrun.plan;

/** The jacket of CSST. */
public enum Jacket implements Named {
    PLAIN,
    ARC_RESISTANT
}
