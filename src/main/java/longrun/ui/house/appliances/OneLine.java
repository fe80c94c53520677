package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.function.Consumer;
import longrun.draft.ApplianceLine;
import longrun.quantity.NotAQuantity;
import longrun.ui.frame.Dom;

/** Adds an appliance from one line, such as {@code furnace 80k}; the cursor stays in it for the next. */
final class OneLine {

    private static final String HELP = "Such as: furnace 80k. Enter adds it.";

    /** The line is empty for the next appliance before the program has answered: what is typed on is not wiped away. */
    private static final String EMPTIED_AT_ONCE = """
        this.addEventListener('keydown', (e) => {
          if (e.key !== 'Enter') return;
          e.preventDefault();
          const typed = this.value;
          this.value = '';
          this.dispatchEvent(new CustomEvent('line-typed', { detail: typed }));
        });
        """;

    private final Consumer<ApplianceLine> add;
    private final Element line = Dom.el("input", "in").setAttribute("id", "add-line");
    private final Element said = Dom.text("p", "said", HELP).setAttribute("role", "status");
    private final Element element;

    OneLine(Consumer<ApplianceLine> add) {
        this.add = add;
        line.setAttribute("autocomplete", "off").setAttribute("aria-describedby", "add-line-said");
        said.setAttribute("id", "add-line-said");
        line.addEventListener("line-typed", e -> typed(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        line.addAttachListener(e -> line.executeJs(EMPTIED_AT_ONCE));
        element = Dom.el(
                "div",
                "fld add",
                Dom.text("label", "lab", "Or in one line").setAttribute("for", "add-line"),
                line,
                said);
    }

    Element element() {
        return element;
    }

    /** What was typed: an appliance more, or what to write instead; what cannot be read stays in the line. */
    void typed(String text) {
        if (text.isBlank()) {
            said(HELP, false);
            return;
        }
        try {
            ApplianceLine read = ApplianceLine.read(text);
            said("Added: " + read.kind().label() + (read.input().isEmpty() ? "" : ", " + read.input()) + ".", false);
            add.accept(read);
        } catch (NotAQuantity e) {
            line.executeJs("if (this.value === '') this.value = $0", text);
            said("\u201c" + text.strip() + "\u201d: " + e.advice(), true);
        }
    }

    private void said(String words, boolean wrong) {
        Dom.retext(said, words);
        Dom.setClass(said, "bad", wrong);
        line.setAttribute("aria-invalid", String.valueOf(wrong));
    }
}
