package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

/** The figure of a slot in the answer: the slot keeps its place, and its figure is written only where it differs. */
public final class SlotFigure {

    private final Element figure = Dom.el("dd", "f").setAttribute("data-fig", "");
    private String shown = "";
    private boolean begun;

    /** The element that shows it. */
    public Element element() {
        return figure;
    }

    /** The figure shown, with its unit. */
    public String shown() {
        return shown;
    }

    /** Shows a figure and its unit, or words where it is not known. */
    public void show(String words, String unit, boolean known) {
        String now = (words + " " + unit).strip();
        Dom.setClass(figure, "none", !known);
        if (begun && now.equals(shown)) {
            return;
        }
        begun = true;
        shown = now;
        if (unit.isEmpty()) {
            Dom.fill(figure, Dom.words(words));
        } else {
            Dom.fill(figure, Dom.words(words + " "), Dom.text("small", "", unit));
        }
    }
}
