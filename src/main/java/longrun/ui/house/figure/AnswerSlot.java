package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.origin.Origin;
import longrun.ui.frame.Dom;
import longrun.ui.frame.SlotFigure;
import longrun.ui.frame.WhereFrom;

/** A fixed slot of the answer: it never moves, only its figure changes. */
public final class AnswerSlot {

    private final SlotFigure figure = new SlotFigure();
    private final Element note = Dom.text("span", "", "");
    private final Element more;
    private final WhereFrom from;
    private final Element slot;

    public AnswerSlot(String id, String name) {
        from = new WhereFrom("from-" + id);
        more = Dom.el("dd", "w", note, Dom.words(" "), from.ask(), from.list());
        slot = Dom.el("div", "slot", Dom.text("dt", "", name), figure.element(), more)
                .setAttribute("id", "slot-" + id);
        from.show(List.of());
    }

    public Element element() {
        return slot;
    }

    /** Something below the figure that is more than a note. */
    public void below(Element element) {
        more.appendChild(element);
    }

    /** @param none the words where there is no figure */
    public void show(Optional<String> value, String unit, String none) {
        figure.show(value.orElse(none), value.isPresent() ? unit : "", value.isPresent());
    }

    public void note(String words) {
        Dom.retext(note, words);
    }

    public void mark(String cssClass, boolean on) {
        Dom.setClass(slot, cssClass, on);
    }

    public void origin(Optional<Origin> origin) {
        from.show(origin.map(OriginSteps::of).orElse(List.of()));
    }
}
