package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;

/**
 * A picture to play with by sliders. They begin where the entries stand; once a person has moved one they stay, and what
 * is entered stays too, until what is played with is kept.
 */
public abstract class SliderPlay {

    private final Element keep;
    private final Element back = Dom.button("ask", "Back to what is entered");
    private final Element kept = Dom.text("p", "s q", "").setAttribute("role", "status");
    private boolean played;

    /** @param keepSays the button that writes what is played with among the entries */
    protected SliderPlay(String keepSays) {
        keep = Dom.button("act", keepSays);
        back.addEventListener("click", e -> restore());
    }

    /** Puts the sliders where the entries stand. */
    protected abstract void rest();

    /** Draws the picture and tells its figures. */
    protected abstract void draw();

    /** Whether a person has moved a slider. */
    protected final boolean isPlayed() {
        return played;
    }

    /** The entries are other than before. */
    protected final void refresh() {
        if (played) {
            redraw();
        } else {
            restore();
        }
    }

    /** A slider was moved. */
    protected final void play() {
        played = true;
        Dom.retext(kept, "");
        redraw();
    }

    private void restore() {
        played = false;
        rest();
        Dom.retext(kept, "");
        redraw();
    }

    private void redraw() {
        Dom.show(back, played);
        draw();
    }

    /** The two buttons under the sliders. */
    protected final Element acts() {
        return Dom.el("div", "acts", keep, back);
    }

    public final Element keepButton() {
        return keep;
    }

    /** What is said once something was kept. */
    protected final Element kept() {
        return kept;
    }
}
