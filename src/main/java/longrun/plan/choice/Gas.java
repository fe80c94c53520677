package longrun.plan.choice;

/** The gas an appliance or a connector rating is made for. */
public enum Gas implements Named {
    PROPANE,
    CONVERTED,
    NATURAL
}
