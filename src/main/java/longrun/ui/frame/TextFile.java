package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import elemental.json.JsonObject;

/** A file input: the chosen file is read as text in the browser and handed to the page. */
public final class TextFile {

    private static final String READ =
            "this.addEventListener('change', async () => { const f = this.files[0]; if (!f) return;"
                    + " const tooLong = f.size > 1048576; const text = tooLong ? '' : await f.text();"
                    + " this.dispatchEvent(new CustomEvent('text-read', {detail: {name: f.name, text, tooLong}}));"
                    + " this.value = ''; })";
    private static final String NAME = "event.detail.name";
    private static final String TEXT = "event.detail.text";
    private static final String TOO_LONG = "event.detail.tooLong";

    /** Receives a file. */
    public interface Taken {

        /** @param tooLong whether it is over 1 MiB; its text is then empty */
        void take(String name, String text, boolean tooLong);
    }

    private final Element input;

    /** @param accept the file name endings and media types offered first */
    public TextFile(String id, String accept, Taken taken) {
        input = Dom.el("input", "")
                .setAttribute("id", id)
                .setAttribute("type", "file")
                .setAttribute("accept", accept);
        // The browser makes a new element each time it is attached.
        input.addAttachListener(e -> input.executeJs(READ));
        input.addEventListener("text-read", e -> {
                    JsonObject d = e.getEventData();
                    taken.take(d.getString(NAME), d.getString(TEXT), d.getBoolean(TOO_LONG));
                })
                .addEventData(NAME)
                .addEventData(TEXT)
                .addEventData(TOO_LONG);
    }

    /** The input. */
    public Element element() {
        return input;
    }
}
