package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import longrun.ui.frame.Dom;
import org.jspecify.annotations.Nullable;

/** The place of one line in the table: a line of text until it is in sight or selected, then a row of fields. */
final class RouteSlot {

    private final int index;
    private final RouteRow.Hand hand;
    private final Element body = Dom.el("tbody", "");
    private @Nullable RouteRow row;
    private @Nullable RouteText text;

    RouteSlot(int index, RouteRow.Hand hand) {
        this.index = index;
        this.hand = hand;
        body.addEventListener("focusin", e -> take()).setFilter("!element.classList.contains('on')");
        body.addEventListener("click", e -> take())
                .setFilter("!element.classList.contains('on') && !event.target.closest('.in')");
    }

    private void take() {
        boolean wasText = row == null;
        hand.inHand(index);
        if (wasText) {
            row().legs()
                    .getElement()
                    .executeJs("setTimeout(() => { if (!document.activeElement || document.activeElement ==="
                            + " document.body) this.focus(); })");
        }
    }

    Element element() {
        return body;
    }

    boolean hasFields() {
        return row != null;
    }

    /** Its row of fields, made where it was a line of text. */
    RouteRow row() {
        if (row == null) {
            body.removeAllChildren();
            text = null;
            row = new RouteRow(index, hand, body);
        }
        return row;
    }

    /** Its line of text, in place of its fields. */
    RouteText text() {
        if (text == null) {
            if (row != null) {
                row.leave();
                row = null;
            }
            text = new RouteText();
            body.appendChild(text.element());
        }
        return text;
    }
}
