package longrun.plan;

/** Whether a tank is buried. */
public enum Placement implements Named {
    ABOVE_GROUND,
    UNDERGROUND
}
