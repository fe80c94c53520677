package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.sections.PressureWords;
import longrun.holdpoint.PredictedPressure;
import longrun.plan.choice.ReadingKind;
import longrun.quantity.Pressure;
import longrun.ui.frame.Dom;
import longrun.words.Names;
import longrun.words.UnitSystem;

/** What is to be read off the gauge, beside what the plan predicts, with a button that enters a reading. */
final class MeasuredTable {

    /** Enters a reading of one kind at one place. */
    interface Enters {
        void reading(String at, ReadingKind kind);
    }

    private final Enters enters;
    private final Element rows = Dom.el("tbody", "");
    private final Element table = Dom.el(
            "table",
            "plain measured",
            Dom.el(
                    "thead",
                    "",
                    Dom.el(
                            "tr",
                            "",
                            head("At"),
                            head("With"),
                            head("Predicted"),
                            head("Measured"),
                            Dom.text("td", "", ""))),
            rows);
    private final Element element = Dom.el("div", "row-box", table)
            .setAttribute("tabindex", "0")
            .setAttribute("role", "group")
            .setAttribute("aria-label", "Pressures to measure");
    private List<PredictedPressure> shown = List.of();
    private Optional<UnitSystem> shownIn = Optional.empty();

    MeasuredTable(Enters enters) {
        this.enters = enters;
    }

    Element element() {
        return element;
    }

    void show(List<PredictedPressure> now, UnitSystem units) {
        Dom.show(element, !now.isEmpty());
        if (now.equals(shown) && shownIn.equals(Optional.of(units))) {
            return;
        }
        shown = now;
        shownIn = Optional.of(units);
        rows.removeAllChildren();
        now.forEach(p -> rows.appendChild(row(p, units)));
    }

    private Element row(PredictedPressure p, UnitSystem units) {
        String with = p.kind() == ReadingKind.LOCK_UP ? "nothing firing" : "everything firing";
        Element enter = Dom.button("ask", "enter a reading")
                .setAttribute("aria-label", "enter a reading: " + p.called() + ", " + with);
        enter.addEventListener("click", e -> enters.reading(p.at(), p.kind()));
        return Dom.el(
                "tr",
                "",
                Dom.text("th", "", Names.capital(p.called())).setAttribute("scope", "row"),
                Dom.text("td", "", with),
                Dom.text("td", "r", words(p.predicted(), units)),
                Dom.text("td", "r", p.measured().isPresent() ? words(p.measured(), units) : "not read yet"),
                Dom.el("td", "", enter));
    }

    private static Element head(String words) {
        return Dom.text("th", "", words).setAttribute("scope", "col");
    }

    private static String words(Optional<Pressure> p, UnitSystem units) {
        return PressureWords.pressure(p, units);
    }
}
