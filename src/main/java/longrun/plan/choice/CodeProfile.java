package longrun.plan.choice;

/** The code that decides on the house side. */
public enum CodeProfile implements Named {
    FUEL_GAS_2018("fuel gas code, 2018"),
    NFPA_54_58("NFPA 54 and 58"),
    PLUMBING_CODE("plumbing code");

    private final String label;

    CodeProfile(String label) {
        this.label = label;
    }

    /** What people call it. */
    public String label() {
        return label;
    }
}
