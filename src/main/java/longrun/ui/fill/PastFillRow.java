package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import longrun.draft.fill.PastFillEntries;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.ui.frame.DayChoice;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.words.UnitSystem;

/** One past fill as typed: its date and what the ticket says. */
final class PastFillRow {

    private final Element body = Dom.el("tbody", "");
    private final Entry date;
    private final Entry gallons;
    private final DayChoice days;
    private final Element workedOut =
            Dom.text("td", "reck", "").setAttribute("data-fig", "").setAttribute("data-l", "Worked out ");
    private final Element remove = Dom.button("ask", "Remove this fill");

    PastFillRow(int index, FillActions hand) {
        String number = String.valueOf(index + 1);
        date = new Entry(
                "past-date-" + index,
                "Past fill " + number + ", filled on",
                "in",
                t -> hand.typedPast(index, PastFillEntries.Column.DATE, t));
        gallons = new Entry(
                "past-gallons-" + index,
                "Past fill " + number + ", gallons",
                "in r",
                t -> hand.typedPast(index, PastFillEntries.Column.GALLONS, t));
        days = new DayChoice("Past fill " + number, day -> {
            date.write(day);
            hand.typedPast(index, PastFillEntries.Column.DATE, day);
            date.getElement().executeJs("this.focus()");
        });
        date.getElement().setAttribute("data-column", "date").setAttribute("data-at", "PAST " + index + " DATE");
        date.getElement().setAttribute("placeholder", index == 0 ? "Jan 12 2026" : "the next fill");
        gallons.getElement()
                .setAttribute("data-column", "gallons")
                .setAttribute("data-at", "PAST " + index + " GALLONS")
                .setAttribute("placeholder", index == 0 ? "gallons" : "");
        remove.addEventListener("click", e -> hand.removedPast(index));
        body.appendChild(
                Dom.el(
                        "tr",
                        "main",
                        Dom.el("td", "tl day", date.getElement()),
                        Dom.el("td", "ent", gallons.getElement()).setAttribute("data-l", "Gallons"),
                        workedOut),
                Dom.el(
                        "tr",
                        "under",
                        Dom.el(
                                        "td",
                                        "",
                                        Dom.el("div", "says", date.said(), days.element(), gallons.said()),
                                        Dom.el("div", "tools", remove))
                                .setAttribute("colspan", "3")));
    }

    Element element() {
        return body;
    }

    Entry entry(PastFillEntries.Column column) {
        return column == PastFillEntries.Column.DATE ? date : gallons;
    }

    void show(PastFillEntries.Past fill, UnitSystem units, String words, String typing) {
        String unit = units == UnitSystem.CUSTOMARY ? "gal" : "L";
        boolean dateStands = !date.text().isBlank() && Typed.date(date.text()).equals(fill.date());
        if (!dateStands && !typing.equals(date.getElement().getAttribute("data-at"))) {
            date.write(fill.date());
        }
        boolean stands = !gallons.text().isBlank()
                && Typed.quantity(gallons.text(), unit).equals(fill.gallons());
        if (!stands && !typing.equals(gallons.getElement().getAttribute("data-at"))) {
            gallons.write(Typed.inField(fill.gallons(), unit));
        }
        days.show(fill.date());
        date.understood(understood(fill.date()));
        gallons.understood("");
        Dom.setClass(body, "next", fill.isBlank());
        Dom.show(remove, !fill.isBlank());
        Dom.retext(workedOut, words);
        markWrong();
    }

    private static String understood(String stored) {
        try {
            return stored.isBlank() ? "" : Typed.words(Typed.readDate(stored));
        } catch (NotAQuantity e) {
            return "";
        }
    }

    void markWrong() {
        Dom.setClass(body, "wrong", date.isWrong() || gallons.isWrong());
    }
}
