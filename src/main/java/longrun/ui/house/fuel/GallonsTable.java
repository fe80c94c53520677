package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import longrun.draft.Climate;
import longrun.fuel.FuelReport;
import longrun.origin.Months;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.MonthsAcross;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;
import longrun.words.Names;
import longrun.words.UnitSystem;

/** Gallons by month and use; a use that is not known is said so, never a zero. */
final class GallonsTable {

    private final HousePage desk;
    private final Element head = Dom.el("thead", "");
    private final Element body = Dom.el("tbody", "");
    private final WhereFrom from = new WhereFrom("from-gallons");
    private final Element element;
    private String shown = "";

    GallonsTable(HousePage desk) {
        this.desk = desk;
        Element box = Dom.el("div", "row-box", Dom.el("table", "plain gallons across", head, body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Gas by month and use");
        element = Dom.el("div", "", box, from.ask(), from.list());
    }

    Element element() {
        return element;
    }

    void show(Review review, FuelReport fuel) {
        List<String> uses = List.copyOf(fuel.monthlyByUse().keySet());
        List<List<String>> rows = new ArrayList<>();
        List<String> titles = new ArrayList<>(List.of(""));
        uses.forEach(u -> titles.add(name(review, u)));
        titles.add("All");
        rows.add(titles);
        for (int m = 0; m < 12; m++) {
            List<String> row = new ArrayList<>(List.of(Climate.MONTHS.get(m)));
            for (Months months : fuel.monthlyByUse().values()) {
                row.add(cell(months, m));
            }
            row.add(cell(fuel.monthlyGal(), m));
            rows.add(row);
        }
        List<String> year = new ArrayList<>(List.of("Year"));
        for (String use : uses) {
            var figure = fuel.byUse().get(use);
            year.add(figure == null || !figure.isKnown() ? "not known" : number(figure.number()));
        }
        year.add(fuel.annualGal().isKnown() ? number(fuel.annualGal().number()) : "not known");
        rows.add(year);
        from.show(OriginSteps.of(fuel.monthlyGal().origin()));
        write(rows);
    }

    private static String name(Review review, String use) {
        return switch (use) {
            case "heating" -> "Heating";
            case "hot-water" -> "Hot water";
            default ->
                use.matches("other-[0-9]+") ? "Other use " + use.substring(6) : Names.capital(Names.of(review, use));
        };
    }

    private String cell(Months months, int m) {
        return months.isKnown() ? number(months.get(m)) : "not known";
    }

    private String number(double gallons) {
        double shownAs = desk.units() == UnitSystem.METRIC ? gallons * 3.785411784 : gallons;
        return String.format(java.util.Locale.ROOT, shownAs > 0 && shownAs < 10 ? "%.1f" : "%,.0f", shownAs);
    }

    private void write(List<List<String>> rows) {
        String now = FigureText.unit("gal", desk.units()) + rows;
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        MonthsAcross.write(head, body, FigureText.unit("gal", desk.units()), rows, "");
    }
}
