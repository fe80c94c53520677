package longrun.plan;

/** Which heaters the hot water passes. */
public enum Arrangement implements Named {
    SERIES,
    ON_DEMAND_ONLY,
    STORAGE_ONLY
}
