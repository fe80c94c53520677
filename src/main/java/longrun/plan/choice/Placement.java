package longrun.plan.choice;

/** Whether a tank is buried. */
public enum Placement implements Named {
    ABOVE_GROUND,
    UNDERGROUND
}
