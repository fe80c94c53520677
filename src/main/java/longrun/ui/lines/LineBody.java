package longrun.ui.lines;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.OptionalLong;
import longrun.ui.frame.Dom;

/**
 * A line as it stands among others: its name, what came of it, and whether it is the next, one kept behind the next, in
 * hand or not understood.
 */
public final class LineBody {

    private static final List<String> STATES = List.of("spare", "next", "on", "wrong");

    private final Element body;
    private final Element id = Dom.text("th", "id", "").setAttribute("scope", "row");
    private final Element load =
            Dom.text("td", "load", "").setAttribute("data-fig", "").setAttribute("data-l", "Load ");
    private final UsedCell used = new UsedCell();
    private final SizeCell size = new SizeCell();
    private boolean spare;
    private boolean on;

    public LineBody(Element body) {
        this.body = body;
    }

    public Element element() {
        return body;
    }

    public Element id() {
        return id;
    }

    public Element load() {
        return load;
    }

    /** Load, share used and size, as they end a line. */
    public Element[] figures() {
        return new Element[] {load, used.element(), size.element()};
    }

    public void name(String name) {
        Dom.retext(id, name);
    }

    /** Whether it is kept behind the next line, out of sight until a person types so far ahead. */
    public void spare(boolean behind) {
        spare = behind;
        Dom.setClass(body, "spare", behind);
    }

    /** Whether nothing is begun in it. */
    public void notBegun(boolean empty) {
        Dom.setClass(body, "next", empty && !spare);
    }

    public void inHand(boolean inHand) {
        on = inHand;
        Dom.setClass(body, "on", inHand);
    }

    public boolean isInHand() {
        return on;
    }

    public void wrong(boolean wrong) {
        Dom.setClass(body, "wrong", wrong);
    }

    /** Leaves its place to what stands there next. */
    public void leave() {
        STATES.forEach(c -> Dom.setClass(body, c, false));
        body.removeAllChildren();
    }

    /**
     * What came of it.
     *
     * @param percent of the capacity used
     * @param words the size, or the word that stands where there is none
     * @param unit of the size, where the column's heading cannot tell it
     * @param note a second name of the size, or empty
     */
    public void answer(String loadWords, OptionalLong percent, String words, String unit, boolean sized, String note) {
        Dom.retext(load, loadWords);
        used.show(percent);
        size.show(words, unit, sized, note);
    }
}
