package longrun.plan.choice;

/** Where cold water comes from. */
public enum ColdWaterSource implements Named {
    WELL,
    MAINS
}
