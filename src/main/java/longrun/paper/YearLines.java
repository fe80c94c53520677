package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.drawing.MonthBars;
import longrun.fuel.FuelReport;
import longrun.origin.Figure;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** The year: gallons by month as bars, days a fill lasts, and the day to call. */
final class YearLines {

    /** A fill that lasts longer is told so: nobody plans by it. */
    private static final double YEAR = 365;

    private YearLines() {}

    static List<Element> elements(Review review) {
        Optional<FuelReport> report = review.fuel();
        if (report.isEmpty()) {
            return List.of();
        }
        FuelReport fuel = report.get();
        List<Element> out = new ArrayList<>();
        out.add(Html.heading(
                "The year",
                fuel.annualGal().isKnown()
                        ? fuel.annualGal().text() + "; gallons by month"
                        : "not all uses are known yet"));
        if (fuel.monthlyGal().isKnown()) {
            out.add(Html.picture(
                    MonthBars.svg(fuel.monthlyGal().values(), "Gallons by month"),
                    "Gallons by month, January first: "
                            + String.join(
                                    ", ",
                                    fuel.monthlyGal().values().stream()
                                            .map(v -> Figure.text(Math.rint(v), ""))
                                            .toList()),
                    330,
                    90));
        }
        out.add(Html.table(
                "How often to come",
                List.of(
                        "A fill lasts, coldest month",
                        "warmest month",
                        "on the mean",
                        "Fills a year",
                        "Refill gauge reached",
                        "Call by"),
                List.of("r", "r", "r", "r", "r", "rz"),
                List.of(List.of(
                        days(fuel.daysPerFill().coldestMonth()),
                        days(fuel.daysPerFill().warmestMonth()),
                        days(fuel.daysPerFill().mean()),
                        fuel.deliveriesPerYear().isKnown()
                                ? Figure.text(Math.rint(fuel.deliveriesPerYear().number() * 10) / 10, "")
                                : SheetWords.BLANK,
                        fuel.nextRefill().map(SheetFile::day).orElse(SheetWords.BLANK),
                        fuel.callBy().map(SheetFile::day).orElse(SheetWords.BLANK)))));
        return out;
    }

    private static String days(Figure f) {
        if (!f.isKnown()) {
            return SheetWords.BLANK;
        }
        return f.number() > YEAR ? "over a year" : Figure.text(Math.rint(f.number()), "days");
    }
}
