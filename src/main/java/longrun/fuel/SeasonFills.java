package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Months;

/** How long a fill lasts in each quarter of the year, so that a truck's rounds can be planned. */
public final class SeasonFills {

    private static final List<String> NAMES =
            List.of("December to February", "March to May", "June to August", "September to November");

    private SeasonFills() {}

    /**
     * Days from a fill down to the refill gauge at each quarter's mean use, December first; unknown where the gallons of
     * the months or the usable gallons are.
     */
    public static List<Figure> of(Figure usableGal, Months monthlyGal) {
        List<Figure> out = new ArrayList<>();
        for (int q = 0; q < NAMES.size(); q++) {
            out.add(Figure.of(
                    "days a fill lasts, " + NAMES.get(q),
                    "days",
                    "usable / gallons a day",
                    Confidence.COMPUTED,
                    List.of(usableGal, perDay(monthlyGal, q)),
                    v -> v[1] > 0 ? v[0] / v[1] : Double.NaN));
        }
        return List.copyOf(out);
    }

    private static Figure perDay(Months gal, int quarter) {
        String name = "gallons a day, " + NAMES.get(quarter);
        if (!gal.isKnown()) {
            return Figure.unknown(name, "gal/day", gal.missing());
        }
        double sum = 0;
        int days = 0;
        for (int m = 0; m < 3; m++) {
            int month = (11 + 3 * quarter + m) % 12;
            sum += gal.get(month);
            days += Months.days(month);
        }
        double mean = sum / days;
        return Figure.of(
                name,
                "gal/day",
                "gallons of its months / their days; " + gal.how(),
                gal.confidence().orElse(Confidence.COMPUTED),
                gal.from(),
                v -> mean);
    }
}
