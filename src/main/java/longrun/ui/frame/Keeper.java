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

/** Keeps the draft in the browser until a store of houses does, opens plan files and saves them. */
@Tag("draft-keeper")
@JsModule("context://frontend/keep.js")
public final class Keeper extends Component {

    private static final String DETAIL = "event.detail";

    /** What the keeper tells the page. */
    public interface Hears {
        /**
         * The page begins.
         *
         * @param text the draft kept, or empty
         * @param unsent entries typed that the program had not answered, by place
         */
        void kept(String text, Map<String, String> unsent, Optional<UnitSystem> units);

        /** Before the page begins: a draft that waited here for a choice between it and another tab's. */
        default void keptAside(String draft) {
            // Only a house that is stored has two versions to choose between.
        }

        /** Another window has kept a draft of its own. */
        void keptElsewhere(String text);

        /** A file was chosen; its text is empty where it was over 1 MiB. */
        void opened(String name, String text, boolean tooLong);

        /** A zip was chosen, where the page offered it; in base 64, empty where it was over 8 MiB. */
        default void openedZip(String name, String base64, boolean tooLong) {
            opened(name, "", tooLong);
        }
    }

    public Keeper(String key, Hears page) {
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
        hearZips(page);
    }

    private void hearZips(Hears page) {
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
     * @param heard what stands in each entry as far as the page has heard
     */
    public void keep(String draft, Map<String, String> heard) {
        JsonObject entries = Json.createObject();
        heard.forEach(entries::put);
        JsonObject state = Json.createObject();
        state.put("draft", draft);
        state.put("heard", entries);
        getElement().setProperty("state", state.toJson());
    }

    /** Keeps it again although it did not change, over what another window has kept. */
    public void keepAgain(String draft) {
        getElement().callJsFunction("store", draft);
    }

    /** Lets go of entries the page has not answered: the person chose another text over them. */
    public void forgetUnsent() {
        getElement().callJsFunction("forget");
    }

    /** Keeps, for this tab alone and over a reload, a draft that waits for a choice between it and another tab's. */
    public void aside(String draft) {
        getElement().callJsFunction("aside", draft);
    }

    /** Says that what is shown is not stored. */
    public void notSaved() {
        getElement().callJsFunction("notSaved");
    }

    public void download(String name, String text) {
        getElement().callJsFunction("download", name, text);
    }

    /** Gives a zip to be kept, in base 64. */
    public void downloadZip(String name, String base64) {
        getElement().callJsFunction("downloadZip", name, base64);
    }

    public void open() {
        getElement().callJsFunction("open", false);
    }

    /** Offers zips of plan files as well. */
    public void openZipsToo() {
        getElement().callJsFunction("open", true);
    }
}
