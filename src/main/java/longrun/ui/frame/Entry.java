package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.Element;
import java.util.function.Consumer;
import longrun.words.Sentence;

/**
 * A text field that is answered at each key. What a person is typing is never overwritten; only undo, a file or a paste sets
 * it. The message {@link #said()} shows what the entry was understood as, or what is wrong.
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

    /** The message beside the field. */
    public Element said() {
        return said;
    }

    /** The text in the field, as last received from the browser. */
    public String text() {
        return getElement().getProperty("value", "");
    }

    /** Sets the text of the field where it differs. */
    public void write(String text) {
        if (!text().equals(text)) {
            getElement().setProperty("value", text);
        }
    }

    /** Shows what the entry was understood as. */
    public void understood(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "");
    }

    /** Gives what the entry was understood as to screen readers alone, since it is the same as what was typed. */
    public void echoed(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "same");
    }

    /** Shows what to write while the field is empty and has the focus. */
    public void helps(String saying) {
        getElement().removeAttribute("aria-invalid");
        say(saying, "help");
    }

    /** Shows what is wrong and what to write instead. */
    public void wrong(String saying) {
        getElement().setAttribute("aria-invalid", "true");
        say(saying, "bad");
    }

    /** Whether an error is shown. */
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
