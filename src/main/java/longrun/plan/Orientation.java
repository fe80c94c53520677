package longrun.plan;

/** How a tank lies. */
public enum Orientation implements Named {
    HORIZONTAL,
    VERTICAL
}
