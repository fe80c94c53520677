package longrun.plan.choice;

/** A part between the end of the pipe and the appliance. */
public enum PartKind implements Named {
    SHUTOFF,
    UNION,
    SEDIMENT_TRAP,
    BUILT_IN_TRAP,
    RIGID_PIPE,
    FLEXIBLE_CONNECTOR
}
