package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.Element;
import java.util.function.Consumer;
import longrun.words.Sentence;

/**
 * A line to write on, which answers at each key. What a person is typing is never written back; only undo, a file or a
 * paste sets it. Beside it {@link #said()} tells what it was understood as, or what is wrong.
 */
@Tag("input")
public final class Entry extends Component {

    private static final String SQUARE =
            "<svg viewBox='0 0 10 10' aria-hidden='true'><rect width='10' height='10' fill='currentColor'/></svg>";

    private final Element said = Dom.el("p", "said");
    private String shownKey = "";

    public Entry(String id, String label, String classes, Consumer<String> typed) {
        Element in = getElement();
        setId(id);
        in.setAttribute("class", classes)
                .setAttribute("type", "text")
                .setAttribute("autocomplete", "off")
                .setAttribute("spellcheck", "false")
                .setAttribute("aria-label", label)
                .setAttribute("aria-describedby", id + "-said");
        said.setAttribute("id", id + "-said");
        in.addPropertyChangeListener("value", "input", e -> {
            if (e.isUserOriginated()) {
                typed.accept(String.valueOf(e.getValue()));
            }
        });
    }

    public Element said() {
        return said;
    }

    /** What stands in the field, as far as the page has heard. */
    public String text() {
        return getElement().getProperty("value", "");
    }

    /** Writes into the field, unless that already stands there. */
    public void write(String text) {
        if (!text().equals(text)) {
            getElement().setProperty("value", text);
        }
    }

    /** Says what the entry was understood as, or helps while it is empty. */
    public void understood(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "");
    }

    /** Says what the entry was understood as where that is what was typed: heard, and not shown once more. */
    public void echoed(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "same");
    }

    /** Says what to write while the entry is empty: shown while it is in hand. */
    public void helps(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "help");
    }

    /** Says what is wrong and what to write instead. */
    public void wrong(String saying) {
        getElement().setAttribute("aria-invalid", "true");
        say(saying, "bad");
    }

    public boolean isWrong() {
        return "true".equals(getElement().getAttribute("aria-invalid"));
    }

    private void say(String saying, String how) {
        String key = how + " " + saying;
        if (key.equals(shownKey)) {
            return;
        }
        shownKey = key;
        said.setAttribute("class", how.isEmpty() ? "said" : "said " + how);
        if (how.equals("bad")) {
            Dom.fill(
                    said, Dom.drawing(SQUARE), Dom.text("b", "", "Not understood "), Dom.words(Sentence.units(saying)));
        } else {
            Dom.fill(said, Dom.words(saying));
        }
    }
}
