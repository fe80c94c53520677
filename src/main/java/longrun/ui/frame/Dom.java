package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.dom.ElementUtil;
import java.util.Map;
import longrun.words.Markup;
import org.jsoup.nodes.Document;

/** Short words for making plain HTML. */
public final class Dom {

    private Dom() {}

    /** An element with its classes (separated by blanks) and children. */
    public static Element el(String tag, String classes, Element... children) {
        Element e = new Element(tag);
        if (!classes.isEmpty()) {
            e.setAttribute("class", classes);
        }
        e.appendChild(children);
        return e;
    }

    public static Element text(String tag, String classes, String text) {
        return el(tag, classes).setText(text);
    }

    /** A text that stands beside other children. */
    public static Element words(String text) {
        return Element.createText(text);
    }

    /** A drawing from trusted mark-up; any text a person typed must have been through {@link #escaped}. */
    public static Element drawing(String svg) {
        return el("span", "drawn").setProperty("innerHTML", svg);
    }

    /**
     * Fills a place that only shows something, all at once: one change for the browser instead of several for every
     * element, so that an answer comes as quickly as its figures. Nothing inside can tell the page of a click; {@code
     * data-do} is heard in the browser.
     */
    public static void fill(Element place, Element... content) {
        Document page = new Document("");
        page.outputSettings().prettyPrint(false);
        for (Element each : content) {
            page.appendChild(ElementUtil.toJsoup(page, each));
        }
        place.setProperty("innerHTML", page.html());
    }

    /** The mark-up of a list's options, words by what is stored: one text for the browser, however many they are. */
    public static String options(Map<String, String> words) {
        StringBuilder out = new StringBuilder();
        words.forEach((value, text) -> out.append("<option value=\"")
                .append(Markup.escaped(value))
                .append("\">")
                .append(Markup.escaped(text))
                .append("</option>"));
        return out.toString();
    }

    /** Empties a place that {@link #fill} filled. */
    public static void clear(Element place) {
        place.setProperty("innerHTML", "");
    }

    /** A button that says what happens. */
    public static Element button(String classes, String says) {
        return text("button", classes, says).setAttribute("type", "button");
    }

    public static void setClass(Element e, String name, boolean on) {
        e.getClassList().set(name, on);
    }

    /** Sets the text only where it changed, so that nothing fades that stayed the same. */
    public static void retext(Element e, String text) {
        if (!e.getText().equals(text)) {
            e.setText(text);
        }
    }

    public static void show(Element e, boolean shown) {
        if (shown) {
            e.removeAttribute("hidden");
        } else {
            e.setAttribute("hidden", true);
        }
    }
}
