package longrun.ui.run;

/** The fitting switch: how elbows and tees add to the measured length. */
enum Allowance {
    NONE("none", "Measured length alone"),
    FIFTH("20 %", "A fifth more"),
    COUNTED("counted", "Counted");

    private final String written;
    private final String title;

    Allowance(String written, String title) {
        this.written = written;
        this.title = title;
    }

    /** As a plan writes it. */
    String written() {
        return written;
    }

    String title() {
        return title;
    }

    static Allowance of(String written) {
        for (Allowance a : values()) {
            if (a.written.equals(written)) {
                return a;
            }
        }
        return COUNTED;
    }
}
