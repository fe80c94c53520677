package longrun.paper.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longrun.origin.Months;
import longrun.origin.Origin;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.TankReport;
import longrun.words.Names;
import longrun.words.OriginWords;
import org.jsoup.nodes.Element;

/** The figures that come by month or by temperature, each list with where it is from over it. */
final class MonthTable {

    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private MonthTable() {}

    /** What belongs under a part of the calculation. */
    static List<Element> of(Review review, CalculationPart part) {
        List<Element> out = new ArrayList<>(months(review, part));
        part.lines().stream()
                .filter(l -> !l.values().isEmpty() && !l.isByMonth())
                .filter(l -> !l.pointer().startsWith("/tank/curve/"))
                .forEach(l -> out.add(Html.text("p", "src", minutes(l))));
        if (part.holds("/tank/curve/")) {
            review.tank().ifPresent(t -> out.addAll(curve(t)));
        }
        return out;
    }

    private static String minutes(CalculationPart.Line line) {
        return line.origin().figure()
                + (line.at().isEmpty() ? "" : " (" + line.at() + ")")
                + ", minute by minute: "
                + line.values().stream()
                        .map(v -> Show.decimals(v, v >= 1000 ? 0 : 1))
                        .collect(Collectors.joining(" "))
                + ".";
    }

    private static List<Element> months(Review review, CalculationPart part) {
        Map<String, Months> columns = new LinkedHashMap<>();
        for (CalculationPart.Line line : part.lines()) {
            if (line.isByMonth()) {
                Origin o = line.origin();
                String unit = o.value().substring(o.value().lastIndexOf(' ') + 1);
                columns.put(
                        Names.capital(OriginWords.plain(o.figure())) + ", " + OriginWords.plain(unit),
                        new Months(o.figure(), line.values(), unit, o.how(), o.confidence(), List.of(), List.of()));
            }
        }
        if (part.holds("/fuel/")) {
            review.fuel()
                    .ifPresent(f ->
                            f.monthlyByUse().forEach((use, months) -> columns.put(gallons(review, use), months)));
        }
        columns.values().removeIf(m -> !m.isKnown());
        if (columns.isEmpty()) {
            return List.of();
        }
        List<String> headings = new ArrayList<>(List.of("Month"));
        headings.addAll(columns.keySet());
        List<String> classes = new ArrayList<>(List.of("z s"));
        columns.forEach((n, m) -> classes.add("r"));
        List<List<String>> rows = new ArrayList<>();
        for (int month = 0; month < MONTHS.size(); month++) {
            List<String> row = new ArrayList<>(List.of(MONTHS.get(month)));
            for (Months m : columns.values()) {
                row.add(Show.decimals(m.get(month), 1));
            }
            rows.add(row);
        }
        List<Element> out = new ArrayList<>();
        out.add(Html.table(part.title() + " by month", headings, classes, rows));
        columns.forEach((name, m) -> out.add(Html.text(
                "p",
                "src",
                name + ": " + OriginWords.plain(m.how())
                        + m.confidence().map(c -> "; held as " + c.written()).orElse("") + ".")));
        return out;
    }

    private static String gallons(Review review, String use) {
        return Names.capital(
                        use.equals("heating") || use.equals("hot-water")
                                ? use.replace('-', ' ')
                                : Names.of(review, use))
                + ", gal";
    }

    private static List<Element> curve(TankReport tank) {
        List<List<String>> rows = new ArrayList<>();
        tank.curve()
                .forEach(p -> rows.add(List.of(
                        Show.plain(p.airF()), SheetWords.whole(p.capacityBtuh()), SheetWords.whole(p.plannedBtuh()))));
        Element table = Html.table(
                "Vapour by the temperature of the air",
                List.of(
                        "Air, \u00b0F",
                        "Most for a short time, Btu/h",
                        "While it keeps the pressure planned with, Btu/h"),
                List.of("r", "r", "r"),
                rows);
        return List.of(
                table.addClass("narrow"),
                Html.text(
                        "p",
                        "src",
                        "By the same rules as the two figures of vapour above, at each temperature of the air."));
    }
}
