package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Origin;
import longrun.ui.frame.Dom;
import longrun.ui.frame.SlotFigure;
import longrun.ui.frame.WhereFrom;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;

/** A figure under its name, with what it lacks, each lack leading to its entry, and the answer to where from. */
public final class FigureSlot {

    private final HousePage desk;
    private final SlotFigure figure = new SlotFigure();
    private final Element note = Dom.text("span", "", "");
    private final Element lacks = Dom.el("span", "lacks");
    private final WhereFrom from;
    private final Element slot;
    private List<Missing> missingShown = List.of();

    public FigureSlot(HousePage desk, String id, String name) {
        this.desk = desk;
        from = new WhereFrom("from-" + id);
        Element more = Dom.el("dd", "w", note, lacks, from.ask(), from.list());
        slot = Dom.el("div", "slot", Dom.text("dt", "", name), figure.element(), more)
                .setAttribute("id", "fig-" + id);
        from.show(List.of());
    }

    public Element element() {
        return slot;
    }

    /** Shows a figure and a note beside it. */
    public void show(Figure f, String words) {
        String unit = f.isKnown() ? FigureText.unit(f.number(), f.unit(), desk.units()) : "";
        figure.show(f.isKnown() ? FigureText.number(f, desk.units()) : "not known", unit, f.isKnown());
        Dom.retext(note, words.isEmpty() ? "" : words + " ");
        lack(f.isKnown() ? List.of() : f.missing());
        from.show(f.isKnown() ? OriginSteps.of(f.origin()) : List.of());
    }

    /** Shows words in place of a figure, such as a date, and where they are from. */
    public void show(String words, String beside, Origin origin) {
        show(words, beside, List.of(origin));
    }

    /** The same where the words beside hold figures of their own: each says where it is from. */
    public void show(String words, String beside, List<Origin> origins) {
        figure.show(words, "", true);
        Dom.retext(note, beside);
        lack(List.of());
        from.show(origins.stream()
                .flatMap(o -> OriginSteps.of(o).stream())
                .distinct()
                .toList());
    }

    /** Shows that it is not known, and what it lacks. */
    public void showUnknown(List<Missing> missing) {
        figure.show("not known", "", false);
        Dom.retext(note, "");
        lack(missing);
        from.show(List.of());
    }

    private void lack(List<Missing> missing) {
        List<Missing> first = missing.subList(0, Math.min(3, missing.size()));
        if (first.equals(missingShown)) {
            return;
        }
        missingShown = first;
        lacks.removeAllChildren();
        for (Missing m : first) {
            if (m.field().isEmpty()) {
                lacks.appendChild(Dom.text("span", "", m.words()));
            } else {
                Element go = Dom.button("ask", "needs " + m.words());
                go.addEventListener("click", e -> desk.goTo(m.field()));
                lacks.appendChild(go);
            }
        }
    }
}
