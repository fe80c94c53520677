package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** The link from an answer to "where from?" to the report on what the program was checked against. */
public final class CheckedLink {

    /** Address of the page. */
    public static final String TO = "checked";

    private CheckedLink() {}

    /** A new link. */
    public static Element element() {
        return Dom.text("a", "ask", "what it was checked against")
                .setAttribute("href", TO)
                .setAttribute("router-link", true);
    }
}
