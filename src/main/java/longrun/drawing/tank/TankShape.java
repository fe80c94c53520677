package longrun.drawing.tank;

import longrun.drawing.plot.PlotSvg;

/**
 * A tank or cylinder seen from the side, to one scale with the others, standing on the ground at the picture's foot.
 *
 * @param wideIn inches
 * @param highIn inches
 * @param standing whether it stands upright, as a cylinder does
 */
public record TankShape(double wideIn, double highIn, boolean standing) {

    private static final double SCALE = 0.86;
    private static final double HIGH = 58;

    /** How wide the picture is, in its own pixels. */
    public double width() {
        return Math.max(24, wideIn * SCALE + 4);
    }

    /** The picture; its ground line is part of it. */
    public String svg() {
        double w = wideIn * SCALE;
        double h = highIn * SCALE;
        double ground = HIGH - 4;
        double left = (width() - w) / 2;
        double foot = standing ? 0 : 6;
        double top = ground - h - foot;
        StringBuilder out = new StringBuilder("<svg class='tank' viewBox='0 0 " + n(width()) + " " + n(HIGH)
                + "' width='" + n(width()) + "' height='" + n(HIGH) + "' aria-hidden='true'>");
        out.append("<rect class='pt' x='")
                .append(n(left))
                .append("' y='")
                .append(n(top))
                .append("' width='")
                .append(n(w))
                .append("' height='")
                .append(n(h))
                .append("' rx='")
                .append(n(standing ? Math.min(w / 2, 8) : h / 2))
                .append("'/>");
        if (standing) {
            out.append(path("M" + n(left + w * 0.28) + " " + n(top) + "v-4h" + n(w * 0.44) + "v4"));
        } else {
            out.append(path("M" + n(left + w * 0.2) + " " + n(ground - foot) + "V" + n(ground) + "M" + n(left + w * 0.8)
                    + " " + n(ground - foot) + "V" + n(ground)));
            out.append(path("M" + n(left + w / 2 - 5) + " " + n(top) + "v-4h10v4"));
        }
        out.append(path("M0 " + n(ground) + "H" + n(width())));
        return out.append("</svg>").toString();
    }

    private static String path(String d) {
        return "<path class='pn' d='" + d + "'/>";
    }

    private static String n(double value) {
        return PlotSvg.number(value);
    }
}
