package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.dom.Element;
import elemental.json.JsonObject;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The frame of every page: head, caution, work, answer, the foot strip of a phone, and the live region for screen readers. A
 * page adds its sections to {@link #work()} and its answer to {@link #answer()}.
 */
@Tag("div")
@JsModule("context://frontend/frame.js")
@JsModule("context://frontend/spoken.js")
@JsModule("context://frontend/fade.js")
@JsModule("context://frontend/connection.js")
@JsModule("context://frontend/paper.js")
@JsModule("context://frontend/answers.js")
public abstract class Frame extends Component {

    private static final String MARK = "<svg class='mark' viewBox='0 0 30 22' aria-hidden='true'><path"
            + " d='M2 20V8l12 7L28 7' fill='none' stroke='currentColor' stroke-width='2.5'"
            + " stroke-linejoin='round'/><circle cx='14' cy='15' r='2.6' fill='var(--accent)'/></svg>";

    private final Element work = Dom.el("div", "work");
    private final Element answer = Dom.el("aside", "answer").setAttribute("tabindex", "-1");
    private final Element undo = Dom.button("", "Undo");
    private final Element redo = Dom.button("", "Redo");
    private final Element units = Dom.el("select", "").setAttribute("aria-label", "Units");
    private final Element spoken = new Element("spoken-answer");
    private final FootStrip foot = new FootStrip();
    private @Nullable UnitSystem unitSystemShown;
    private final Element heading = Dom.text("h1", "", "");
    private final Element codeShown = Dom.text("span", "", "");
    private final Element sheet;
    private final Element unitsShown = Dom.el("div", "units", Dom.text("span", "l", "Units"), units);

    protected Frame(String title, String code) {
        Element page = getElement().setAttribute("class", "page");
        answer.setAttribute("aria-label", "The answer so far").setAttribute("id", "answer");
        spoken.setAttribute("class", "vh").setAttribute("aria-live", "polite");
        sheet = Dom.el("main", "sheet no-thread", work, answer)
                .setAttribute("id", "work")
                .setAttribute("tabindex", "-1");
        page.appendChild(
                Dom.text("a", "skip", "Skip to the entries").setAttribute("href", "#work"),
                head(title, code),
                Caution.element(),
                gone(),
                sheet);
        page.appendChild(afterWork());
        page.appendChild(foot.element(), spoken);
    }

    /** Elements between the work and the foot, such as lines to sign on paper. */
    protected Element[] afterWork() {
        return new Element[0];
    }

    private Element head(String title, String code) {
        Element theme = Dom.el("button", "", Dom.text("span", "to-dark", "Dark"), Dom.text("span", "to-light", "Light"))
                .setAttribute("type", "button")
                .setAttribute("data-do", "theme");
        Element nav = Dom.el("nav", "", undo, redo, theme);
        nav.setAttribute("aria-label", "Sheet");
        title(title);
        code(code);
        Element home = Dom.el("a", "home", Dom.drawing(MARK), Dom.words("Longrun"))
                .setAttribute("href", ".")
                .setAttribute("router-link", true);
        Element brand = Dom.el("div", "", home);
        return Dom.el(
                "header",
                "head",
                brand,
                heading,
                Dom.el("div", "opt", Dom.text("span", "l", "Code"), codeShown),
                unitsShown,
                Dom.el(
                        "div",
                        "paper-only",
                        Dom.text("span", "l", "Printed"),
                        Dom.words(" "),
                        Dom.text("span", "", "").setAttribute("data-today", "")),
                Dom.el("div", "grow opt"),
                Dom.el("div", "", Dom.text("span", "saved", "").setAttribute("role", "status")),
                nav);
    }

    private static Element gone() {
        Element words = Dom.el(
                "div",
                "",
                Dom.text("b", "", "The program does not answer. "),
                Dom.words("What you type is kept in this browser and entered when it answers again. The figures shown"
                        + " are the last it gave. If it was stopped, start it again; this page can stay open."));
        return Dom.el("section", "gone", words).setAttribute("role", "status").setAttribute("aria-label", "Connection");
    }

    /** Sets the title of the page. */
    protected final void title(String title) {
        Dom.retext(heading, title);
    }

    /** Sets the name of the code that applies. */
    protected final void code(String code) {
        Dom.retext(codeShown, code);
    }

    /** Adds the list of places at the left. */
    protected final void thread(Element places) {
        sheet.setAttribute("class", "sheet");
        sheet.insertChild(0, places);
    }

    /** Removes the answer and the foot strip, on pages without an answer. */
    protected final void noAnswer() {
        sheet.setAttribute("class", "sheet no-thread no-answer");
        answer.removeFromParent();
        foot.element().removeFromParent();
        unitsShown.removeFromParent();
    }

    /** Removes undo and redo, on pages where nothing is entered. */
    protected final void noSheetActions() {
        undo.removeFromParent();
        redo.removeFromParent();
    }

    protected final Element work() {
        return work;
    }

    protected final Element answer() {
        return answer;
    }

    protected final FootStrip foot() {
        return foot;
    }

    /** A section with its heading and a note at the side. */
    protected static Element section(String id, String heading, String note, Element... content) {
        Element side = Dom.el("div", "sidehead", Dom.text("h2", "", heading).setAttribute("id", id));
        if (!note.isEmpty()) {
            side.appendChild(Dom.text("p", "", note));
        }
        return Dom.el("section", "side", side, Dom.el("div", "", content)).setAttribute("aria-labelledby", id);
    }

    protected final void onUndo(Runnable undone, Runnable redone) {
        undo.addEventListener("click", e -> undone.run());
        redo.addEventListener("click", e -> redone.run());
        getElement().addEventListener("sheet-undo", e -> undone.run());
        getElement().addEventListener("sheet-redo", e -> redone.run());
    }

    protected final void canUndo(boolean canUndo, boolean canRedo) {
        undo.setEnabled(canUndo);
        redo.setEnabled(canRedo);
        undo.setAttribute("disabled", !canUndo);
        redo.setAttribute("disabled", !canRedo);
    }

    protected final void onUnits(Consumer<UnitSystem> chosen) {
        for (UnitSystem each : UnitSystem.values()) {
            units.appendChild(Dom.text("option", "", each.label()).setAttribute("value", each.name()));
        }
        units.addEventListener("change", e -> {
                    JsonObject data = e.getEventData();
                    chosen.accept(UnitSystem.valueOf(data.getString("element.value")));
                })
                .addEventData("element.value");
    }

    protected final void showUnits(UnitSystem system) {
        if (system != unitSystemShown) {
            unitSystemShown = system;
            units.executeJs("this.value = $0", system.name());
        }
    }

    /** Sets the facts, by name, that screen readers hear one second after the last key where they have changed. */
    protected final void speak(Map<String, String> facts) {
        JsonObject json = elemental.json.Json.createObject();
        new TreeMap<>(facts).forEach(json::put);
        spoken.setProperty("facts", json.toJson());
    }
}
