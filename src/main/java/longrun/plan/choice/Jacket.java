package longrun.plan.choice;

/** The jacket of CSST. */
public enum Jacket implements Named {
    PLAIN,
    ARC_RESISTANT
}
