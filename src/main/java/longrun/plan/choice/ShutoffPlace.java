package longrun.plan.choice;

/** Where an appliance's shutoff is. */
public enum ShutoffPlace implements Named {
    APPLIANCE,
    MANIFOLD,
    REMOTE
}
