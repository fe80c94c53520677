package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.choice.ColdWaterSource;
import longrun.quantity.Temperature;

/**
 * Cold water by the month, degF: as entered; a well without temperature at the year's mean air temperature; else the
 * town-mains formula of Burch and Christensen (2007), its angle in degrees.
 */
public final class ColdWater {

    private static final String NAME = "cold water";
    private static final String UNIT = "degF";

    private ColdWater() {}

    /** Cold water of each month, or what is missing to know it. */
    public static Months of(Plan plan) {
        Optional<Site.ColdWater> entry = plan.site().flatMap(Site::coldWater);
        Optional<List<Temperature>> entered = entry.flatMap(c -> c.temp().findValue());
        if (entered.isPresent() && (entered.get().size() == 1 || entered.get().size() == 12)) {
            List<Temperature> t = entered.get();
            List<Double> values = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
                values.add(t.get(t.size() == 1 ? 0 : m).degF());
            }
            return new Months(NAME, values, UNIT, "entered", Optional.empty(), List.of(), List.of());
        }
        Optional<List<Double>> air = airMeans(plan);
        if (air.isEmpty()) {
            return Months.unknown(
                    NAME,
                    UNIT,
                    List.of(
                            new Missing("/site/coldWater/temp", "temperature of the cold water, one value or twelve"),
                            new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months")));
        }
        boolean well = entry.map(c -> c.source().is(ColdWaterSource.WELL)).orElse(false);
        double mean = yearMean(air.get());
        Figure meanAir = Figure.given(
                "mean air of the year", mean, UNIT, "day-weighted mean of the months entered", Confidence.COMPUTED);
        if (well) {
            return Months.known(
                    NAME,
                    Collections.nCopies(12, mean),
                    UNIT,
                    "a well without a temperature: the year's mean air temperature",
                    Confidence.MEMORY,
                    List.of(meanAir));
        }
        double swing = Collections.max(air.get()) - Collections.min(air.get());
        boolean south = south(air.get());
        return Months.known(
                NAME,
                mainsMonths(mean, swing, south),
                UNIT,
                "town-mains formula, Burch and Christensen 2007, mean over each month's days"
                        + (south ? "; south of the equator by the warmest month" : ""),
                Confidence.SECONDARY,
                List.of(
                        meanAir,
                        Figure.given(
                                "warmest month less coldest",
                                swing,
                                UNIT,
                                "of the months entered",
                                Confidence.COMPUTED)));
    }

    /** Whether the town-mains formula stands in because no source of cold water was entered. */
    public static boolean mainsAssumed(Plan plan) {
        return plan.site()
                .flatMap(Site::coldWater)
                .map(c -> !c.source().isKnown() && !c.temp().isKnown())
                .orElse(true);
    }

    /** The twelve monthly means of the air, where all twelve are entered. */
    public static Optional<List<Double>> airMeans(Plan plan) {
        return plan.site()
                .flatMap(s -> s.monthlyMeanTemp().findValue())
                .filter(t -> t.size() == 12)
                .map(t -> t.stream().map(Temperature::degF).toList());
    }

    /** Day-weighted mean of twelve months. */
    public static double yearMean(List<Double> months) {
        double sum = 0;
        for (int m = 0; m < 12; m++) {
            sum += months.get(m) * Months.days(m);
        }
        return sum / 365;
    }

    /** Whether the warmest month falls in the half-year from October to March: then the house stands in the south. */
    static boolean south(List<Double> months) {
        int warmest = 0;
        for (int m = 1; m < 12; m++) {
            warmest = months.get(m) > months.get(warmest) ? m : warmest;
        }
        return warmest < 3 || warmest > 8;
    }

    /**
     * Mains temperature on a day, degF: (mean + 6) + R x swing / 2 x sin(0.986 (n - 15 - L) - 90), in degrees, in the south
     * + 90; never below freezing.
     *
     * @param day of the year, 1 to 365
     * @param meanF the year's mean air temperature
     * @param swingF warmest monthly mean less the coldest
     * @param south of the equator
     */
    public static double mains(int day, double meanF, double swingF, boolean south) {
        double ratio = 0.4 + 0.01 * (meanF - 44);
        double lag = 35 - 1.0 * (meanF - 44);
        double angle = 0.986 * (day - 15 - lag) + (south ? 90 : -90);
        return Math.max(32, meanF + 6 + ratio * swingF / 2 * Math.sin(Math.toRadians(angle)));
    }

    /** Mean of the daily mains temperature over each month's days. */
    public static List<Double> mainsMonths(double meanF, double swingF, boolean south) {
        List<Double> means = new ArrayList<>();
        int day = 1;
        for (int m = 0; m < 12; m++) {
            double sum = 0;
            for (int d = 0; d < Months.days(m); d++) {
                sum += mains(day++, meanF, swingF, south);
            }
            means.add(sum / Months.days(m));
        }
        return List.copyOf(means);
    }
}
