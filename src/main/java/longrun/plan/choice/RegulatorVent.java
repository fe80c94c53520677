package longrun.plan.choice;

/** Where the vent of a line regulator goes. */
public enum RegulatorVent implements Named {
    OUTDOORS,
    LIMITER,
    PIPED
}
