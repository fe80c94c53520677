package longrun.ui.lines;

import com.vaadin.flow.dom.Element;
import java.util.OptionalLong;
import longrun.ui.frame.Dom;

/** The cell of a line that tells how much of its pipe's capacity is used: a figure and a bar. */
public final class UsedCell {

    private final Element cell =
            Dom.text("td", "used", "").setAttribute("data-fig", "").setAttribute("data-l", "Used ");
    private OptionalLong shown = OptionalLong.empty();

    public Element element() {
        return cell;
    }

    public void show(OptionalLong percent) {
        if (percent.equals(shown)) {
            return;
        }
        shown = percent;
        if (percent.isEmpty()) {
            Dom.clear(cell);
            return;
        }
        Element bar = Dom.el("i", "");
        bar.getStyle().set("width", Math.min(100, percent.getAsLong()) + "%");
        Dom.fill(cell, Dom.words(percent.getAsLong() + " %"), Dom.el("span", "use", bar));
    }
}
