package longrun.plan.choice;

/** A part that may be named among a section's fittings. */
public enum PipeFitting implements Named {
    ELBOW_90,
    ELBOW_45,
    TEE_BRANCH,
    VALVE
}
