package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.PastFillEntries;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.TicketFit;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.ui.frame.Dom;
import longrun.words.FigureText;
import longrun.words.UnitSystem;

/** Past fills from the tickets, what was worked out for each, and the prediction for the next. */
final class PastFillTable {

    private final Element table = Dom.el("table", "lines past");
    private final Element gallonsHead = Dom.text("th", "", "Gallons").setAttribute("scope", "col");
    private final Element said = Dom.text("p", "s", "").setAttribute("role", "status");
    private final Element element;
    private final List<PastFillRow> rows = new ArrayList<>();
    private final FillActions hand;

    PastFillTable(FillActions hand) {
        this.hand = hand;
        table.addEventListener("pasted", e -> hand.pastedFills(e.getEventData().getString("event.detail")))
                .addEventData("event.detail");
        table.appendChild(
                Dom.text("caption", "vh", "Past fills"),
                Dom.el(
                        "thead",
                        "",
                        Dom.el(
                                "tr",
                                "",
                                Dom.text("th", "tl", "Filled on").setAttribute("scope", "col"),
                                gallonsHead,
                                Dom.text("th", "", "Worked out").setAttribute("scope", "col"))));
        Element heading = Dom.el("h2", "", Dom.words("Past fills "), Dom.text("span", "q", "from the tickets"));
        element = Dom.el("section", "", heading, table, said);
    }

    Element element() {
        return element;
    }

    PastFillRow row(int index) {
        return rows.get(index);
    }

    int size() {
        return rows.size();
    }

    void show(FillDraft draft, Optional<FillReport> report, LocalDate today, UnitSystem units, String typing) {
        List<PastFillEntries.Past> fills = draft.past();
        while (rows.size() > fills.size() + 1) {
            rows.remove(rows.size() - 1).element().removeFromParent();
        }
        while (rows.size() < fills.size() + 1) {
            PastFillRow row = new PastFillRow(rows.size(), hand);
            rows.add(row);
            table.appendChild(row.element());
        }
        Dom.retext(gallonsHead, units == UnitSystem.CUSTOMARY ? "Gallons" : "Litres");
        for (int i = 0; i < rows.size(); i++) {
            PastFillEntries.Past fill = i < fills.size() ? fills.get(i) : new PastFillEntries.Past("", "");
            rows.get(i).show(fill, units, workedOut(fill, i == rows.size() - 1, report, today, units), typing);
        }
        Dom.setClass(element, "none-typed", fills.isEmpty());
        Dom.retext(said, words(fills, report, units));
    }

    private static String workedOut(
            PastFillEntries.Past fill, boolean next, Optional<FillReport> report, LocalDate today, UnitSystem units) {
        Optional<TicketFit> fit = report.flatMap(FillReport::fit);
        Optional<LocalDate> on = date(fill.date());
        if (fit.isEmpty() || report.flatMap(FillReport::byEntries).isEmpty()) {
            return "";
        }
        if (next && fill.isBlank() || fill.gallons().isBlank()) {
            return fit.get()
                    .predict(report.get().byEntries().orElseThrow(), on.orElse(today))
                    .map(f -> predicted(f, report.get(), units) + (on.isPresent() ? "" : " for today"))
                    .orElse("");
        }
        for (TicketFit.Past p : fit.get().past()) {
            if (on.equals(Optional.of(p.to()))) {
                OptionalDouble predicted = p.predictedGal();
                return FigureText.number(predicted.orElse(p.workedOutGal()), "gal", units)
                        + (predicted.isPresent() ? ", " + miss(p) : "");
            }
        }
        return fit.get().past().stream().anyMatch(p -> on.equals(Optional.of(p.from()))) ? "start" : "";
    }

    /** A fill takes no more than a full tank holds: where more is predicted, one is missing from the list. */
    private static String predicted(TicketFit.Prediction f, FillReport report, UnitSystem units) {
        boolean tooMuch = report.tank().fullGal().isKnown()
                && f.gallons() > report.tank().fullGal().number();
        return tooMuch
                ? "more than a full tank: a fill is missing"
                : FigureText.number(f.gallons(), "gal", units) + " predicted";
    }

    private static String miss(TicketFit.Past p) {
        double miss = p.miss().orElse(0);
        long hundredths = Math.round(100 * Math.abs(miss));
        return hundredths == 0 ? "as predicted" : hundredths + " % " + (miss > 0 ? "over" : "under");
    }

    private static Optional<LocalDate> date(String stored) {
        try {
            return stored.isBlank() ? Optional.empty() : Optional.of(Typed.readDate(stored));
        } catch (NotAQuantity e) {
            return Optional.empty();
        }
    }

    private static String words(List<PastFillEntries.Past> fills, Optional<FillReport> report, UnitSystem units) {
        Optional<TicketFit> fit = report.flatMap(FillReport::fit);
        if (fit.isEmpty()) {
            long whole = fills.stream()
                    .filter(f -> !f.date().isBlank() && !f.gallons().isBlank())
                    .count();
            return whole < 2
                    ? "Two fills to the same level set the scale of the whole year; from then on each fill is predicted before it comes. A list of dates and gallons can be pasted."
                    : "The fills are compared with the year once everything that burns is known.";
        }
        TicketFit f = fit.get();
        double gallons = f.past().stream().mapToDouble(TicketFit.Past::gallons).sum();
        double workedOut =
                f.past().stream().mapToDouble(TicketFit.Past::workedOutGal).sum();
        TicketFit.Past last = f.past().get(f.past().size() - 1);
        long days = last.to().toEpochDay() - f.past().get(0).from().toEpochDay();
        String odd = f.scale() < 0.5 || f.scale() > 2
                ? " That is far from the entries: look for a fill left out, a partial fill, or a mistake in what burns."
                : "";
        return "In " + FillWords.whole(days) + " days the house burned " + FigureText.words(gallons, "gal", units)
                + " where "
                + FigureText.words(workedOut, "gal", units)
                + " were worked out from the entries, so every figure here is scaled by "
                + String.format(Locale.ROOT, "%.2f", f.scale()) + ", give or take "
                + Math.max(1, Math.round(100 * f.spread())) + " in 100." + odd;
    }

    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            for (PastFillEntries.Column c : PastFillEntries.Column.values()) {
                heard.put("PAST " + i + " " + c, rows.get(i).entry(c).text());
            }
        }
        return heard;
    }
}
