package longrun.plan.choice;

/** What a section of pipe is made of. CSST has no bore, only flow designations; the others have. */
public enum Material implements Named {
    /** Schedule 40 steel pipe, by nominal size. */
    STEEL("steel"),
    /** Copper tube; capacities by the Type K bore. */
    COPPER("copper"),
    /** Corrugated stainless steel tubing, by equivalent hydraulic diameter (EHD). */
    CSST("CSST"),
    /** Polyethylene pipe, by nominal size. */
    PE_PIPE("polyethylene pipe"),
    /** Polyethylene tubing, by copper tube size (CTS). */
    PE_TUBING("polyethylene tubing");

    private final String label;

    Material(String label) {
        this.label = label;
    }

    /** The trade's name, for people. */
    public String label() {
        return label;
    }

    public boolean isPlastic() {
        return this == PE_PIPE || this == PE_TUBING;
    }

    /** Whether it turns by bending rather than by fittings. */
    public boolean bends() {
        return this != STEEL;
    }
}
