package longrun.plan.choice;

/** The code that decides on the house side. */
public enum CodeProfile implements Named {
    FUEL_GAS_2018,
    NFPA_54_58,
    PLUMBING_CODE
}
