package longrun.draft.run;

/** The materials a run can be sized in. */
public enum Pipe {
    STEEL("steel", "Steel", "steel", "Schedule 40", "in. steel,\nSchedule 40", "indoors"),
    COPPER("copper", "Copper", "copper", "nominal and OD", "in. copper,\nnominal", "indoors"),
    CSST("csst", "Corrugated tubing", "CSST", "CSST, by its EHD number", "EHD,\ncorrugated tubing", "indoors"),
    POLYETHYLENE(
            "pe-pipe",
            "Polyethylene",
            "polyethylene",
            "buried, outdoors only",
            "in. polyethylene\npipe",
            "underground");

    private final String written;
    private final String title;
    private final String brief;
    private final String note;
    private final String beside;
    private final String setting;

    Pipe(String written, String title, String brief, String note, String beside, String setting) {
        this.written = written;
        this.title = title;
        this.brief = brief;
        this.note = note;
        this.beside = beside;
        this.setting = setting;
    }

    /** As a plan writes it. */
    String written() {
        return written;
    }

    public String title() {
        return title;
    }

    /** The word for it among others. */
    public String brief() {
        return brief;
    }

    public String note() {
        return note;
    }

    /** The words beside the size in hand. */
    public String beside() {
        return beside;
    }

    /**
     * Where a line of such pipe lies in a run that says nothing else. Polyethylene is bought to be buried; but behind a
     * regulator on the wall or a 2 psi line into the house, and at an appliance, the line is in the house: the safer
     * reading.
     *
     * @param branches whether further lines leave it
     */
    String setting(Start start, boolean branches) {
        return start == Start.TANK && branches ? setting : "indoors";
    }

    /** The heading of a column of sizes. */
    public String sizeHeading() {
        return "Size, " + unit();
    }

    /** What a size is counted in. */
    public String unit() {
        return this == CSST ? "EHD" : "in.";
    }

    /** What a size is counted in, to stand behind it. */
    public String sizeUnit() {
        return "\u00a0" + unit();
    }

    /** The pipe a plan writes so; empty where this page does not size it. */
    public static java.util.Optional<Pipe> of(String written) {
        for (Pipe p : values()) {
            if (p.written.equals(written)) {
                return java.util.Optional.of(p);
            }
        }
        return java.util.Optional.empty();
    }
}
