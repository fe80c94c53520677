package longrun.plan.choice;

/** Which heaters the hot water passes. */
public enum Arrangement implements Named {
    SERIES("in series"),
    ON_DEMAND_ONLY("on-demand alone"),
    STORAGE_ONLY("storage alone");

    private final String label;

    Arrangement(String label) {
        this.label = label;
    }

    /** How it is called in a sentence. */
    public String label() {
        return label;
    }
}
