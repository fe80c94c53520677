package longrun.plan.choice;

/** How a tank lies. */
public enum Orientation implements Named {
    HORIZONTAL,
    VERTICAL
}
