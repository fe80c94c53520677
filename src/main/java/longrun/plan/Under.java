package longrun.plan;

/** What a buried section passes under. */
public enum Under implements Named {
    BUILDING,
    SLAB,
    DRIVE
}
