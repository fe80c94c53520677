package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import elemental.json.Json;
import elemental.json.JsonArray;
import elemental.json.JsonObject;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.words.UnitSystem;

/** Keeps the draft in the browser until it is stored, and opens and saves plan files. */
@Tag("draft-keeper")
@JsModule("context://frontend/keep.js")
public final class DraftKeeper extends Component {

    private static final String DETAIL = "event.detail";

    /** Receives what the browser reports. */
    public interface Listener {
        /**
         * The page has loaded.
         *
         * @param text the draft kept in the browser; empty where there is none
         * @param unsent what was typed and not yet answered, by the address of its entry
         * @param units the units last chosen; empty where none were
         */
        void kept(String text, Map<String, String> unsent, Optional<UnitSystem> units);

        /** Before {@link #kept}: a draft that waits for a choice between it and another tab's. */
        default void keptAside(String draft) {
            // Only a stored house can have two versions to choose between.
        }

        /** Another window has changed the draft kept in the browser. */
        void keptElsewhere(String text);

        /** A file was chosen; its text is empty where it is too long, over 1 MiB. */
        void opened(String name, String text, boolean tooLong);

        /** A zip file was chosen, where the page offers it; in base64, empty where it is too long, over 8 MiB. */
        default void openedZip(String name, String base64, boolean tooLong) {
            opened(name, "", tooLong);
        }
    }

    /** @param key the name under which the browser keeps the draft */
    public DraftKeeper(String key, Listener page) {
        getElement().setProperty("keep", key);
        getElement()
                .addEventListener("kept", e -> {
                    JsonObject d = e.getEventData().getObject(DETAIL);
                    if (!d.getString("aside").isEmpty()) {
                        page.keptAside(d.getString("aside"));
                    }
                    page.kept(d.getString("text"), unsent(d.getString("unsent")), units(d.getString("units")));
                })
                .addEventData(DETAIL);
        getElement()
                .addEventListener(
                        "kept-elsewhere",
                        e -> page.keptElsewhere(e.getEventData().getString(DETAIL)))
                .addEventData(DETAIL);
        getElement()
                .addEventListener("opened", e -> {
                    JsonObject d = e.getEventData().getObject(DETAIL);
                    page.opened(d.getString("name"), d.getString("text"), d.getBoolean("tooLong"));
                })
                .addEventData(DETAIL);
        listenForZips(page);
    }

    private void listenForZips(Listener page) {
        getElement()
                .addEventListener("opened-zip", e -> {
                    JsonObject d = e.getEventData().getObject(DETAIL);
                    page.openedZip(d.getString("name"), d.getString("base64"), d.getBoolean("tooLong"));
                })
                .addEventData(DETAIL);
    }

    private static Map<String, String> unsent(String json) {
        Map<String, String> all = new LinkedHashMap<>();
        JsonArray pairs = Json.instance().parse(json);
        for (int i = 0; i < pairs.length(); i++) {
            JsonArray pair = pairs.getArray(i);
            all.put(pair.getString(0), pair.getString(1));
        }
        return all;
    }

    private static Optional<UnitSystem> units(String name) {
        for (UnitSystem each : UnitSystem.values()) {
            if (each.name().equals(name)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /**
     * Keeps the draft as it is now.
     *
     * @param heard the text of each entry as last received from the browser, by its address
     */
    public void keep(String draft, Map<String, String> heard) {
        JsonObject entries = Json.createObject();
        heard.forEach(entries::put);
        JsonObject state = Json.createObject();
        state.put("draft", draft);
        state.put("heard", entries);
        getElement().setProperty("state", state.toJson());
    }

    /** Keeps the draft again although it has not changed, in place of what another window has kept. */
    public void keepAgain(String draft) {
        getElement().callJsFunction("store", draft);
    }

    /** Forgets what was typed and not yet answered, because the person chose another version. */
    public void forgetUnsent() {
        getElement().callJsFunction("forget");
    }

    /** Keeps, for this tab alone and through a reload, a draft that waits for a choice between it and another tab's. */
    public void aside(String draft) {
        getElement().callJsFunction("aside", draft);
    }

    /** Shows that what is on the page is not saved. */
    public void notSaved() {
        getElement().callJsFunction("notSaved");
    }

    /** Offers a text file for download. */
    public void download(String name, String text) {
        getElement().callJsFunction("download", name, text);
    }

    /** Offers a zip file for download, given in base64. */
    public void downloadZip(String name, String base64) {
        getElement().callJsFunction("downloadZip", name, base64);
    }

    /** Lets the person choose a plan file. */
    public void open() {
        getElement().callJsFunction("open", false);
    }

    /** Lets the person choose a plan file or a zip of plan files. */
    public void openZipsToo() {
        getElement().callJsFunction("open", true);
    }
}
