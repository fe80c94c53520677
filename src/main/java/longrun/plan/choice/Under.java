package longrun.plan.choice;

/** What a buried section passes under. */
public enum Under implements Named {
    BUILDING,
    SLAB,
    DRIVE
}
