package longrun.drawing.svg;

/** A small picture for a sheet of paper, black on white: how it begins, and its two sizes of letters. */
public final class Plate {

    private Plate() {}

    /**
     * The opening of a picture.
     *
     * @param description for those who do not see it
     */
    public static SvgText open(double width, double height, String description) {
        SvgText out = SvgText.picture(0, 0, width, height, description);
        // 11 px at three quarters of a point a pixel is 8.25 pt, the smallest a sheet may bear
        out.raw("<style>")
                .raw(Pens.css(Palette.PAPER))
                .raw(".schematic .k{font-size:11px;fill:#333}.schematic .v{font-size:12px}")
                .raw(".schematic .big{font-size:16px;font-weight:700}.schematic .bar{fill:#000}")
                .raw("</style>");
        return out;
    }
}
