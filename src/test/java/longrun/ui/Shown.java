package longrun.ui;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.dom.ElementUtil;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import longrun.ui.frame.Entry;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Tag;
import org.jsoup.select.Elements;
import org.jsoup.select.QueryParser;

/** What a place of a page says, places filled with mark-up too. A part of it is named as the style sheets name it. */
public final class Shown {

    private Shown() {}

    /** All its words, one after the other, as the browser would hold them. */
    public static String text(Element place) {
        return words(ElementUtil.toJsoup(new Document(""), place));
    }

    /** All its words that are not hidden. */
    public static String inSight(Element place) {
        Node node = ElementUtil.toJsoup(new Document(""), place);
        if (node instanceof org.jsoup.nodes.Element element) {
            element.select("[hidden]").remove();
        }
        return words(node);
    }

    /** What a field says of what was typed. */
    public static Optional<String> saying(Entry entry) {
        return Optional.of(text(entry.said()).replaceFirst("^Not understood ", ""))
                .filter(s -> !s.isEmpty());
    }

    /** Which of a few is chosen, under the heading of that id; empty where none is. */
    public static Optional<String> chosen(Element place, String heading) {
        return all(place, "[role=radiogroup]").stream()
                .filter(e -> heading.equals(e.getAttribute("aria-labelledby")))
                .flatMap(e -> all(e, "input[data-chosen]").stream())
                .map(e -> e.getAttribute("value"))
                .findFirst();
    }

    /** The words of a part; several of that name one after the other. */
    public static String text(Element place, String part) {
        return String.join("", texts(place, part));
    }

    /** The words of a part, a blank between those of two elements. */
    public static String spaced(Element place, String part) {
        List<String> words = new java.util.ArrayList<>();
        parts(place, part).traverse((n, depth) -> {
            if (n instanceof TextNode text && !text.isBlank()) {
                words.add(text.text().strip());
            }
        });
        return String.join(" ", words);
    }

    /** The words of each part of that name, of which there is at least one. */
    public static List<String> texts(Element place, String part) {
        return parts(place, part).stream().map(Shown::words).toList();
    }

    /** The words of a part in sight; nothing where it is hidden or there is none. */
    public static String wordsInSight(Element place, String part) {
        Document page = page(place);
        page.select("[hidden]").remove();
        return page.select(part).stream().map(Shown::words).collect(Collectors.joining());
    }

    /** The rows of a table, a line each, cells parted by a comma. */
    public static String rows(Element place, String table) {
        return parts(place, table).select("tr").stream()
                .map(tr -> tr.select("th, td").stream().map(Shown::words).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("\n"));
    }

    /** The mark-up inside a part, such as a drawing. */
    public static String markUp(Element place, String part) {
        return parts(place, part).html();
    }

    /** How many parts of that name there are. */
    public static int count(Element place, String part) {
        return page(place).select(part).size();
    }

    /** The first element that itself is named so. */
    public static Element first(Element place, String part) {
        List<Element> found = all(place, part);
        if (found.isEmpty()) {
            throw new AssertionError("no " + part + " on the page");
        }
        return found.get(0);
    }

    /** Every element that itself is named so, in the order of the page. */
    public static List<Element> all(Element place, String part) {
        List<Element> out = new java.util.ArrayList<>();
        var named = QueryParser.parse(part);
        each(place, e -> {
            org.jsoup.nodes.Element alone = new org.jsoup.nodes.Element(Tag.valueOf(e.getTag()), "");
            e.getAttributeNames().forEach(a -> alone.attr(a, e.getAttribute(a)));
            if (named.matches(alone, alone)) {
                out.add(e);
            }
        });
        return out;
    }

    static void each(Element place, Consumer<Element> seen) {
        if (!place.isTextNode()) {
            seen.accept(place);
            place.getChildren().forEach(child -> each(child, seen));
        }
    }

    /** Each piece of text in it by itself, as far as no element divides it. */
    public static List<String> pieces(Element place) {
        List<String> pieces = new java.util.ArrayList<>();
        page(place).traverse((n, depth) -> {
            if (n instanceof TextNode text && !text.isBlank()) {
                pieces.add(text.getWholeText());
            }
        });
        return pieces;
    }

    private static Elements parts(Element place, String part) {
        Elements found = page(place).select(part);
        if (found.isEmpty()) {
            throw new AssertionError("no " + part + " on the page");
        }
        return found;
    }

    private static Document page(Element place) {
        Document page = new Document("");
        page.outputSettings().prettyPrint(false);
        page.appendChild(ElementUtil.toJsoup(page, place));
        return page;
    }

    private static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.traverse((n, depth) -> {
            if (n instanceof TextNode text) {
                words.append(text.getWholeText());
            }
        });
        return words.toString();
    }
}
