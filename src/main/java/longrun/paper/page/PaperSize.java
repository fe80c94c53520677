package longrun.paper.page;

/** The paper a sheet is printed on. */
public enum PaperSize {
    /** 8-1/2 by 11 in. */
    LETTER("letter", 8.5 * 72, 11 * 72),
    /** 210 by 297 mm (ISO 216). */
    A4("A4", 210 / 25.4 * 72, 297 / 25.4 * 72);

    private final String css;
    private final double widthPt;
    private final double heightPt;

    PaperSize(String css, double widthPt, double heightPt) {
        this.css = css;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    /** As a style sheet names it. */
    String css() {
        return css;
    }

    /** Points of 1/72 in. */
    public double widthPt() {
        return widthPt;
    }

    /** Points of 1/72 in. */
    public double heightPt() {
        return heightPt;
    }
}
