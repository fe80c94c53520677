package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.dom.ElementUtil;
import java.util.Map;
import longrun.words.Markup;
import org.jsoup.nodes.Document;

/** Short methods for making plain HTML elements. */
public final class Dom {

    private Dom() {}

    /** An element with its classes, separated by spaces, and its children. */
    public static Element el(String tag, String classes, Element... children) {
        Element e = new Element(tag);
        if (!classes.isEmpty()) {
            e.setAttribute("class", classes);
        }
        e.appendChild(children);
        return e;
    }

    /** An element that holds a text. */
    public static Element text(String tag, String classes, String text) {
        return el(tag, classes).setText(text);
    }

    /** A text node beside other children. */
    public static Element words(String text) {
        return Element.createText(text);
    }

    /** A drawing from trusted SVG; text that a person typed must have been escaped with {@link Markup#escaped}. */
    public static Element drawing(String svg) {
        return el("span", "drawn").setProperty("innerHTML", svg);
    }

    /**
     * Fills an element that only shows something, as one piece of HTML: one change for the browser instead of several for
     * every element, so that an answer appears quickly. Nothing inside can report a click to the page; {@code data-do} is
     * handled in the browser.
     */
    public static void fill(Element place, Element... content) {
        Document page = new Document("");
        page.outputSettings().prettyPrint(false);
        for (Element each : content) {
            page.appendChild(ElementUtil.toJsoup(page, each));
        }
        place.setProperty("innerHTML", page.html());
    }

    /** The HTML of a list's options, from the value stored to the words shown; one text for the browser, however many. */
    public static String options(Map<String, String> words) {
        StringBuilder out = new StringBuilder();
        words.forEach((value, text) -> out.append("<option value=\"")
                .append(Markup.escaped(value))
                .append("\">")
                .append(Markup.escaped(text))
                .append("</option>"));
        return out.toString();
    }

    /** Empties an element that {@link #fill} filled. */
    public static void clear(Element place) {
        place.setProperty("innerHTML", "");
    }

    /** A button with its label. */
    public static Element button(String classes, String says) {
        return text("button", classes, says).setAttribute("type", "button");
    }

    /** Adds or removes a class. */
    public static void setClass(Element e, String name, boolean on) {
        e.getClassList().set(name, on);
    }

    /** Sets a text only where it differs, so that only changes are highlighted. */
    public static void retext(Element e, String text) {
        if (!e.getText().equals(text)) {
            e.setText(text);
        }
    }

    /** Shows or hides an element. */
    public static void show(Element e, boolean shown) {
        if (shown) {
            e.removeAttribute("hidden");
        } else {
            e.setAttribute("hidden", true);
        }
    }
}
