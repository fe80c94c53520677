package longrun.capacity;

/** What turns the gas, or a tee's side outlet, as the equivalent length tables count it. A valve counts as ELBOW_90. */
public enum Turn {
    ELBOW_90(0.90, "elbow_90_screwed"),
    ELBOW_45(0.42, "elbow_45_screwed"),
    /** A tee with flow turning through its side outlet. */
    TEE_BRANCH(1.80, "tee_screwed"),
    /** Tube bent by hand to a wide radius. */
    BEND(0.21, "");

    private final double k;
    private final String steelColumn;

    Turn(double k, String steelColumn) {
        this.k = k;
        this.steelColumn = steelColumn;
    }

    /** Resistance in velocity heads, 2018 IRC Appendix A Table A.2.2 (the bend: its widest welding elbow). */
    public double k() {
        return k;
    }

    String steelColumn() {
        return steelColumn;
    }
}
