package longrun.draft.run;

/** The pipe materials in which a run can be sized. */
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

    /** Its name in a plan. */
    String written() {
        return written;
    }

    /** Its name as a heading. */
    public String title() {
        return title;
    }

    /** Its short name within a sentence. */
    public String brief() {
        return brief;
    }

    /** The line under its name in the choice of material. */
    public String note() {
        return note;
    }

    /** The words beside the selected size. */
    public String beside() {
        return beside;
    }

    /**
     * Where a line of this pipe lies, since a run does not ask. Polyethylene is made to be buried; but behind a regulator on
     * the wall, on 2 psi and at an appliance the line is taken as indoors: the safer reading.
     *
     * @param branches whether other lines leave it
     */
    String setting(PressureStart start, boolean branches) {
        return start == PressureStart.TANK && branches ? setting : "indoors";
    }

    /** The heading of a column of sizes. */
    public String sizeHeading() {
        return "Size, " + unit();
    }

    /** The unit of a size. */
    public String unit() {
        return this == CSST ? "EHD" : "in.";
    }

    /** The unit of a size, to follow it. */
    public String sizeUnit() {
        return "\u00a0" + unit();
    }

    /** The pipe by its name in a plan; empty where a run cannot be sized in it. */
    public static java.util.Optional<Pipe> of(String written) {
        for (Pipe p : values()) {
            if (p.written.equals(written)) {
                return java.util.Optional.of(p);
            }
        }
        return java.util.Optional.empty();
    }
}
