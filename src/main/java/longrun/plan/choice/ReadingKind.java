package longrun.plan.choice;

/** What a gauge reading was taken for. */
public enum ReadingKind implements Named {
    LOCK_UP,
    FLOWING_ALL,
    FLOWING_ALONE,
    STATIC,
    TEST,
    LEAK_CHECK
}
