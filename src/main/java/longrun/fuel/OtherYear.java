package longrun.fuel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Months;

/**
 * How a year may differ from the one worked out: what the entries leave in doubt, or what tickets say of it.
 *
 * @param warmerF degrees by which every month is warmer; below 0 colder
 * @param times of all uses
 * @param byUse of single uses beside that: heating, hot-water, appliance ids
 */
public record OtherYear(double warmerF, double times, Map<String, Double> byUse) {

    /** The key of space heating among the uses. */
    public static final String HEATING = YearUse.HEATING;

    /** The year as worked out. */
    public static final OtherYear PLAIN = new OtherYear(0, 1, Map.of());

    public OtherYear {
        byUse = Map.copyOf(byUse);
    }

    public static OtherYear warmer(double degF) {
        return new OtherYear(degF, 1, Map.of());
    }

    public static OtherYear times(double times) {
        return new OtherYear(0, times, Map.of());
    }

    public static OtherYear timesOf(String use, double times) {
        return new OtherYear(0, 1, Map.of(use, times));
    }

    /** Both differences at once. */
    public OtherYear and(OtherYear also) {
        Map<String, Double> both = new LinkedHashMap<>(byUse);
        also.byUse.forEach((use, t) -> both.merge(use, t, (a, b) -> a * b));
        return new OtherYear(warmerF + also.warmerF, times * also.times, both);
    }

    double factor(String use) {
        return times * byUse.getOrDefault(use, 1.0);
    }

    /** The uses so many times as great; the very same where nothing is changed, so that no digit moves. */
    YearUse scaled(YearUse use) {
        if (times == 1 && byUse.values().stream().allMatch(t -> t == 1)) {
            return use;
        }
        Map<String, Months> monthly = new LinkedHashMap<>();
        Map<String, double[]> daily = new LinkedHashMap<>();
        List<Double> sum = new ArrayList<>(Collections.nCopies(12, 0.0));
        use.monthly().forEach((key, months) -> {
            Months now = times(months, factor(key));
            monthly.put(key, now);
            for (int m = 0; now.isKnown() && m < 12; m++) {
                sum.set(m, sum.get(m) + now.get(m));
            }
        });
        use.daily()
                .forEach((key, days) -> daily.put(
                        key, Arrays.stream(days).map(g -> g * factor(key)).toArray()));
        List<Figure> from = monthly.entrySet().stream()
                .map(e -> e.getValue().sum(e.getKey()))
                .toList();
        Months total = use.total().isKnown()
                ? Months.known("all uses", sum, use.total().unit(), "sum of the uses", Confidence.COMPUTED, from)
                : use.total();
        return new YearUse(
                Collections.unmodifiableMap(monthly),
                Collections.unmodifiableMap(daily),
                total,
                times(use.roomHeat(), factor(HEATING)));
    }

    private static Months times(Months months, double times) {
        return months.isKnown()
                ? Months.known(
                        months.name(),
                        months.values().stream().map(g -> g * times).toList(),
                        months.unit(),
                        months.how() + ", x " + Figure.text(times, ""),
                        months.confidence().orElse(Confidence.COMPUTED),
                        months.from())
                : months;
    }
}
