package longrun.drawing.svg;

import longrun.words.Markup;

/** Writes SVG: numbers to two decimals in any locale, every text escaped. */
public final class SvgText {

    private final StringBuilder out = new StringBuilder(8192);

    /** A number to two decimals, without trailing zeros. */
    public static String n(double v) {
        long hundredths = Math.round(v * 100);
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        String end = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest;
        return sign + whole + end;
    }

    /**
     * A picture, opened, with its title.
     *
     * @param description for those who do not see it
     */
    public static SvgText picture(double left, double top, double width, double height, String description) {
        SvgText out = new SvgText();
        out.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "schematic",
                "role",
                "img",
                "width",
                n(width),
                "height",
                n(height),
                "viewBox",
                n(left) + " " + n(top) + " " + n(width) + " " + n(height));
        out.open("title").raw(Markup.escaped(description)).close("title");
        return out;
    }

    public SvgText raw(String markup) {
        out.append(markup);
        return this;
    }

    public SvgText open(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(Markup.escaped(attributes[i + 1]))
                    .append('"');
        }
        out.append('>');
        return this;
    }

    public SvgText close(String tag) {
        out.append("</").append(tag).append(">\n");
        return this;
    }

    public SvgText path(String pen, String d) {
        out.append("<path class=\"").append(pen).append("\" d=\"").append(d).append("\"/>");
        return this;
    }

    public SvgText circle(String pen, Point c, double r) {
        out.append("<circle class=\"").append(pen).append("\" cx=\"").append(n(c.x()));
        out.append("\" cy=\"").append(n(c.y())).append("\" r=\"").append(n(r)).append("\"/>");
        return this;
    }

    /** A line of words. */
    public SvgText words(String pen, Point at, String anchor, double turned, String text) {
        open(
                "text",
                "class",
                pen,
                "text-anchor",
                anchor,
                turned == 0 ? "x" : "transform",
                turned == 0 ? n(at.x()) : "translate(" + n(at.x()) + " " + n(at.y()) + ") rotate(" + n(turned) + ")",
                turned == 0 ? "y" : "dy",
                turned == 0 ? n(at.y()) : "0");
        out.append(Markup.escaped(text)).append("</text>");
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    public static String line(Point... points) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < points.length; i++) {
            d.append(i == 0 ? "M" : "L").append(n(points[i].x())).append(' ').append(n(points[i].y()));
        }
        return d.toString();
    }
}
