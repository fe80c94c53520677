package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.drawing.route.DrawingUnits;
import longrun.drawing.route.Schematic;
import longrun.drawing.svg.Palette;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.ScrollHint;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The drawing, which keeps its letters' size and slides sideways where it is wider than its place; it can be made larger and
 * smaller and pulled about.
 */
final class DrawingPane {

    private static final String KEY = "(event.target.closest('[data-key]')||{dataset:{key:''}}).dataset.key";

    private final Element box = Dom.el("div", "pan-box")
            .setAttribute("tabindex", "0")
            .setAttribute("role", "region")
            .setAttribute("aria-label", "Drawing of the route");
    private final Element element =
            Dom.el("section", "part drawing", box, new Element("pan-tools"), ScrollHint.hint(box));
    private @Nullable Review shown;
    private String shownKey = "";

    DrawingPane(Consumer<String> chosen) {
        box.addEventListener("click", e -> {
                    String key = e.getEventData().getString(KEY);
                    if (!key.isEmpty()) {
                        chosen.accept(key);
                    }
                })
                .addEventData(KEY);
    }

    Element element() {
        return element;
    }

    void show(Optional<Review> review, Optional<String> inHand, UnitSystem units) {
        Dom.show(element, review.isPresent());
        if (review.isEmpty()) {
            return;
        }
        String key = inHand.orElse("") + units;
        if (review.get() == shown && key.equals(shownKey)) {
            return;
        }
        shown = review.get();
        shownKey = key;
        DrawingUnits lettered = units == UnitSystem.METRIC ? DrawingUnits.METRIC : DrawingUnits.CUSTOMARY;
        String svg = Schematic.svg(shown, inHand, lettered, Palette.SCREEN);
        box.setProperty("innerHTML", svg);
    }
}
