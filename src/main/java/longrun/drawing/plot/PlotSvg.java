package longrun.drawing.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import longrun.words.Markup;

/** Writes a plot as SVG: two decimals, one pen (pipe 2.5, parts 1.25, leaders 0.75 px), colours by name only. */
public final class PlotSvg {

    /** The pen's colours; each falls back to the light sheet's where a file stands alone. */
    public enum Ink {
        INK("var(--ink,#1D2B33)"),
        QUIET("var(--quiet,#4C5963)"),
        ACCENT("var(--accent,#8A4318)"),
        MUST("var(--must,#9C1B1F)");

        private final String css;

        Ink(String css) {
            this.css = css;
        }
    }

    public static final double PIPE = 2.5;
    public static final double PART = 1.25;
    public static final double LEADER = 0.75;

    private final StringBuilder out = new StringBuilder();

    public PlotSvg(double width, double height, String label) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\" role=\"img\" aria-label=\"")
                .append(Markup.escaped(label))
                .append("\" font-family=\"-apple-system,'Segoe UI',Roboto,'Liberation Sans',Arial,sans-serif\"")
                .append(" font-size=\"14\">\n");
    }

    public void line(double x1, double y1, double x2, double y2, double width, Ink ink, String dash) {
        path(new double[] {x1, x2}, new double[] {y1, y2}, width, ink, dash);
    }

    public void path(double[] x, double[] y, double width, Ink ink, String dash) {
        out.append("<path d=\"");
        for (int i = 0; i < x.length; i++) {
            out.append(i == 0 ? "M" : "L").append(number(x[i])).append(' ').append(number(y[i]));
        }
        out.append("\" style=\"fill:none;stroke:")
                .append(ink.css)
                .append(";stroke-width:")
                .append(number(width));
        if (!dash.isEmpty()) {
            out.append(";stroke-dasharray:").append(dash);
        }
        out.append("\"/>\n");
    }

    public void text(double x, double y, String anchor, Ink ink, String text) {
        out.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\" style=\"fill:")
                .append(ink.css)
                .append("\">")
                .append(Markup.escaped(text))
                .append("</text>\n");
    }

    /** What the picture says, in words, for those who hear it; stands first. */
    public void title(String words) {
        out.append("<title>").append(Markup.escaped(words)).append("</title>\n");
    }

    /** Text of another weight or size, with paper under it where lines cross. */
    public void words(double x, double y, String anchor, Ink ink, int size, boolean bold, String text) {
        out.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\" style=\"fill:")
                .append(ink.css)
                .append(";font-size:")
                .append(size)
                .append("px;font-weight:")
                .append(bold ? 600 : 400)
                .append(";paint-order:stroke;stroke:var(--paper,#FAF8F3);stroke-width:5px;stroke-linejoin:round\">")
                .append(Markup.escaped(text))
                .append("</text>\n");
    }

    /** A round part: filled with ink, or with paper and an outline. */
    public void circle(double x, double y, double r, Ink ink, boolean filled) {
        out.append("<circle cx=\"")
                .append(number(x))
                .append("\" cy=\"")
                .append(number(y))
                .append("\" r=\"")
                .append(number(r))
                .append("\" style=\"fill:")
                .append(filled ? ink.css : "var(--paper,#FAF8F3)")
                .append(";stroke:")
                .append(ink.css)
                .append(";stroke-width:")
                .append(number(PART))
                .append("\"/>\n");
    }

    /** A closed part, filled with ink or with paper. */
    public void shape(double[] x, double[] y, Ink ink, boolean filled) {
        out.append("<path d=\"");
        for (int i = 0; i < x.length; i++) {
            out.append(i == 0 ? "M" : "L").append(number(x[i])).append(' ').append(number(y[i]));
        }
        out.append("Z\" style=\"fill:")
                .append(filled ? ink.css : "var(--paper,#FAF8F3)")
                .append(";stroke:")
                .append(ink.css)
                .append(";stroke-width:")
                .append(number(PART))
                .append(";stroke-linejoin:round\"/>\n");
    }

    public String end() {
        return out.append("</svg>\n").toString();
    }

    /** At most two decimals, never an exponent, never a comma. */
    public static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
