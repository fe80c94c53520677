package longrun.ui.run;

import java.util.Locale;

/** The bore of the pipe at true size, as far as it fits. */
final class BoreDrawing {

    private static final double PIXELS_PER_INCH = 96; // a CSS inch
    private static final double ROOM = 50;

    private BoreDrawing() {}

    static String of(double boreInches) {
        double radius = boreInches * PIXELS_PER_INCH / 2;
        boolean fits = radius <= ROOM;
        double r = Math.min(radius, ROOM);
        String scale = fits ? "true size" : "not to scale";
        boolean inside = r > 34;
        String label = String.format(Locale.ROOT, "%.3f", boreInches);
        String words = inside
                ? "<text y='-2' text-anchor='middle' class='ts'>" + label
                        + "</text><text y='26' text-anchor='middle' class='tq'>bore, in.</text>"
                : "<text y='-34' text-anchor='middle' class='ts'>" + label
                        + "</text><text y='48' text-anchor='middle' class='tq'>bore, in.</text>";
        String rr = String.format(Locale.ROOT, "%.1f", r);
        return "<svg width='104' height='104' viewBox='-52 -52 104 104' role='img' aria-label='The bore, " + label
                + " in., " + scale + "'><circle r='" + rr + "' class='p'/><path class='ld' d='M-" + rr + " 7H" + rr
                + "M-" + rr + " 7l7 -2.6v5.2zM" + rr + " 7l-7 -2.6v5.2z' style='fill:var(--quiet)'/>" + words
                + "</svg>";
    }
}
