package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import elemental.json.JsonObject;

/** A file chosen from the computer and read as text in the browser; it goes nowhere else. */
public final class TextFile {

    private static final String READ =
            "this.addEventListener('change', async () => { const f = this.files[0]; if (!f) return;"
                    + " const tooLong = f.size > 1048576; const text = tooLong ? '' : await f.text();"
                    + " this.dispatchEvent(new CustomEvent('text-read', {detail: {name: f.name, text, tooLong}}));"
                    + " this.value = ''; })";
    private static final String NAME = "event.detail.name";
    private static final String TEXT = "event.detail.text";
    private static final String TOO_LONG = "event.detail.tooLong";

    /** What is done with a file. */
    public interface Taken {

        /** @param tooLong over 1 MiB; its text is then empty */
        void take(String name, String text, boolean tooLong);
    }

    private final Element input;

    /** @param accept the endings and kinds offered first */
    public TextFile(String id, String accept, Taken taken) {
        input = Dom.el("input", "")
                .setAttribute("id", id)
                .setAttribute("type", "file")
                .setAttribute("accept", accept);
        // Each time it comes onto a page it is made anew in the browser.
        input.addAttachListener(e -> input.executeJs(READ));
        input.addEventListener("text-read", e -> {
                    JsonObject d = e.getEventData();
                    taken.take(d.getString(NAME), d.getString(TEXT), d.getBoolean(TOO_LONG));
                })
                .addEventData(NAME)
                .addEventData(TEXT)
                .addEventData(TOO_LONG);
    }

    public Element element() {
        return input;
    }
}
