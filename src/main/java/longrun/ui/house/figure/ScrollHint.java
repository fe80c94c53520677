package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;

/** Says beside a drawing that it slides sideways, where it is wider than its place. */
public final class ScrollHint {

    /** Only the browser knows whether the drawing is wider than the window lets it be. */
    private static final String WHETHER_IT_SLIDES =
            "const look = () => this.parentElement?.classList.toggle('slides', this.scrollWidth > this.clientWidth + 1);"
                    + " new ResizeObserver(look).observe(this);"
                    + " new MutationObserver(look).observe(this, {childList: true, subtree: true, attributeFilter: ['style']}); look()";

    private ScrollHint() {}

    /** The words, to stand after the box in the same parent. */
    public static Element hint(Element box) {
        box.addAttachListener(e -> box.executeJs(WHETHER_IT_SLIDES));
        return Dom.text("p", "q s slide", "Slide the drawing sideways.");
    }
}
