package longrun.paper.page;

import java.util.List;
import longrun.words.IsolatedName;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;

/** Short words for making a sheet. Text is always text: nothing a person typed becomes markup. */
public final class Html {

    private Html() {}

    /** An element with its children. */
    public static Element el(String tag, String cssClass, Element... children) {
        Element e = new Element(tag);
        if (!cssClass.isEmpty()) {
            e.addClass(cssClass);
        }
        for (Element c : children) {
            e.appendChild(c);
        }
        return e;
    }

    /** An element with text in it. */
    public static Element text(String tag, String cssClass, String text) {
        return el(tag, cssClass).appendChild(new TextNode(printable(text)));
    }

    /** A heading with a quiet word behind it. */
    public static Element heading(String text, String quiet) {
        Element h = text("h2", "", text);
        return quiet.isEmpty() ? h : h.appendText(" ").appendChild(text("span", "q", quiet));
    }

    /** Two parts side by side, where the sheet is short of room. */
    public static Element besideEachOther(List<Element> left, List<Element> right) {
        Element one = el("td", "", left.toArray(Element[]::new));
        Element other = el("td", "", right.toArray(Element[]::new));
        return el("table", "two", el("tr", "", one, other));
    }

    /** A paragraph that is led by a strong word. */
    public static Element led(String lead, String rest) {
        return el("p", "", text("b", "", lead)).appendText(" " + printable(rest));
    }

    /** A table with its headings; a class that begins with r sets a column to the right. */
    public static Element table(String caption, List<String> headings, List<String> classes, List<List<String>> rows) {
        Element head = el("tr", "");
        for (int c = 0; c < headings.size(); c++) {
            head.appendChild(text("th", classes.get(c), headings.get(c)).attr("scope", "col"));
        }
        Element body = el("tbody", "");
        for (List<String> row : rows) {
            Element tr = el("tr", "");
            for (int c = 0; c < row.size(); c++) {
                tr.appendChild(text("td", classes.get(c), row.get(c)));
            }
            body.appendChild(tr);
        }
        return el("table", "t", el("thead", "", head), body).attr("title", printable(caption));
    }

    /**
     * A picture, no wider than a given room; never made larger than it is drawn.
     *
     * @param svg one svg element, of this program's own making
     * @param alternative what is seen in it, for those who do not see it
     * @param widthPt the room there is, points
     * @param heightPt the room there is, points
     */
    public static Element picture(String svg, String alternative, double widthPt, double heightPt) {
        Element drawn = Jsoup.parse(IsolatedName.withoutMarks(svg), "", Parser.xmlParser())
                .selectFirst("svg");
        if (drawn == null) {
            throw new IllegalArgumentException("no svg element");
        }
        drawn.attr("alt", printable(alternative));
        double width = Double.parseDouble(drawn.attr("width"));
        double height = Double.parseDouble(drawn.attr("height"));
        double scale = scale(width, height, widthPt, heightPt);
        drawn.attr("style", "width:" + Math.floor(width * scale) + "pt;height:" + Math.floor(height * scale) + "pt");
        // what a browser paints in one, a stroke behind its letters, is two here
        for (Element words : drawn.select("text.halo")) {
            words.removeClass("halo");
            words.before(words.clone().attr("style", "fill:#fff;stroke:#fff;stroke-width:5px;stroke-linejoin:round"));
        }
        drawn.select("text").forEach(t -> t.attr("style", t.attr("style") + ";font-family:Sheet"));
        drawn.select("text.ts,text.tb,text.tm,text.big,tspan.ts,tspan.tb")
                .forEach(t -> t.attr("style", t.attr("style") + ";font-family:SheetBold;font-weight:400"));
        return el("div", "picture", drawn);
    }

    /** Points a pixel of a picture that is given some room. */
    public static double scale(double width, double height, double widthPt, double heightPt) {
        return Math.min(0.75, Math.min(widthPt / width, heightPt / height));
    }

    /** What a picture of this program's own making says of itself in words. */
    public static String titleOf(String svg) {
        Element title = Jsoup.parse(svg, "", Parser.xmlParser()).selectFirst("title");
        return title == null ? "" : title.text();
    }

    /** Text without what no page can show: control characters and marks of direction are left out. */
    public static String printable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        IsolatedName.withoutMarks(text)
                .codePoints()
                .map(c -> Character.isWhitespace(c) ? ' ' : c)
                .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE)
                .forEach(out::appendCodePoint);
        return out.toString();
    }
}
