package longrun.drawing.svg;

/**
 * The inks of a drawing, as CSS colours.
 *
 * @param ink lines and figures
 * @param quiet leaders and what is secondary
 * @param accent the selected section
 * @param must what must be fixed
 * @param paper the ground
 */
public record Palette(String ink, String quiet, String accent, String must, String paper) {

    /** The page's own variables, so that a drawing follows light and dark; with colours of its own where there are none. */
    public static final Palette SCREEN = new Palette(
            "var(--ink,#1D2B33)",
            "var(--quiet,#4C5963)",
            "var(--accent,#8A4318)",
            "var(--must,#9C1B1F)",
            "var(--paper,#FAF8F3)");

    /** Black on white, for paper. */
    public static final Palette PAPER = new Palette("#000", "#333", "#000", "#000", "#fff");
}
