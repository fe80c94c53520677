package longrun.plan;

/** Where cold water comes from. */
public enum ColdWaterSource implements Named {
    WELL,
    MAINS
}
