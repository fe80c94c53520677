package longrun.ui;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.dom.ElementUtil;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** What a place of a page says, places filled with mark-up too. */
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
