package longrun.paper;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.drawing.plot.MonthBars;
import longrun.fuel.FuelReport;
import longrun.fuel.SeasonFills;
import longrun.origin.Figure;
import longrun.origin.Months;
import longrun.paper.page.Html;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SheetWords;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** The year: gallons by month as bars and as figures, days a fill lasts in each season, and the day to call. */
final class YearLines {

    /** A fill that lasts longer is told so: nobody plans by it. */
    private static final double YEAR = 365;

    private YearLines() {}

    /**
     * @param width of the sheet between its margins, points
     * @param tall of the tallest bar, points; none are drawn under ten
     */
    static List<Element> elements(Review review, double width, double tall) {
        Optional<FuelReport> fuel = review.fuel();
        Months months = fuel.map(FuelReport::monthlyGal).orElse(Months.unknown("gallons", "gal", List.of()));
        List<Element> out = new ArrayList<>();
        out.add(Html.heading(
                "The year",
                fuel.map(FuelReport::annualGal)
                        .filter(Figure::isKnown)
                        .map(g -> g.text() + "; gallons by month")
                        .orElse("gallons by month: not all uses are known yet")));
        if (months.isKnown() && tall >= 10) {
            String bars = MonthBars.svg(
                    months.values(),
                    Math.floor(width) / 0.75,
                    tall / 0.75,
                    "Gallons by month, January first: " + said(months));
            out.add(Html.picture(bars, Html.titleOf(bars), width, tall + 4).addClass("bars"));
        }
        out.add(figures(months));
        out.add(fills(review, fuel, months));
        return out;
    }

    private static String said(Months months) {
        return String.join(
                ", ", months.values().stream().map(YearLines::gallons).toList());
    }

    private static String gallons(double value) {
        return Figure.text(Math.rint(value), "");
    }

    private static Element figures(Months months) {
        List<String> names = new ArrayList<>();
        List<String> row = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            names.add(Month.of(m + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
            row.add(months.isKnown() ? gallons(months.get(m)) : "____");
        }
        return Html.table("Gallons by month", names, Collections.nCopies(12, "c"), List.of(row))
                .addClass("months");
    }

    private static Element fills(Review review, Optional<FuelReport> fuel, Months months) {
        List<String> row = new ArrayList<>(List.of("A fill lasts"));
        Figure usable = review.tank().map(t -> t.usableGal()).orElse(Figure.unknown("usable", "gal", List.of()));
        SeasonFills.of(usable, months).forEach(f -> row.add(days(f)));
        row.add(fuel.map(f -> days(f.daysPerFill().coldestMonth())).orElse(SheetWords.BLANK));
        row.add(fuel.map(f -> days(f.daysPerFill().mean())).orElse(SheetWords.BLANK));
        row.add(fuel.map(FuelReport::deliveriesPerYear)
                .filter(Figure::isKnown)
                .map(f -> String.format(Locale.ROOT, "%.1f", f.number()))
                .orElse(SheetWords.BLANK));
        row.add(fuel.flatMap(FuelReport::nextRefill).map(SheetFile::day).orElse(SheetWords.BLANK));
        row.add(fuel.flatMap(FuelReport::callBy).map(SheetFile::day).orElse(SheetWords.BLANK));
        return Html.table(
                        "How often to come",
                        List.of(
                                "",
                                "Dec to Feb",
                                "Mar to May",
                                "Jun to Aug",
                                "Sep to Nov",
                                "coldest month",
                                "mean",
                                "fills a year",
                                "refill gauge on",
                                "call by"),
                        List.of("s", "r", "r", "r", "r", "r", "r", "r", "r", "r i"),
                        List.of(row))
                .addClass("fills");
    }

    /** Whole days, or that it is over a year; a blank where not known. */
    static String days(Figure f) {
        if (!f.isKnown()) {
            return SheetWords.BLANK;
        }
        return f.number() > YEAR ? "over a year" : Figure.text(Math.rint(f.number()), "days");
    }
}
