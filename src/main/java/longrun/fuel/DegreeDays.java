package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Months;

/**
 * Heating degree days, degF-days, of a month from its mean temperature (Erbs and others, 1983): the days of a month scatter
 * about its mean, the more the colder the month and the greater the swing of the year, so that a mild month still heats.
 */
public final class DegreeDays {

    /** The base degree days are published to, degF. */
    public static final double PUBLISHED_BASE_F = 65;

    private static final double LN2 = Math.log(2);
    private static final double LEAST_SCATTER = 0.1; // degC; the formula's own runs out in the tropics

    private final double[] months = new double[12];
    private final double[] days = new double[365];

    /**
     * Degree days of a year.
     *
     * @param means monthly mean air, degF, January first
     * @param baseF base temperature
     */
    public DegreeDays(List<Double> means, double baseF) {
        this(means, baseF, new AirYear(means));
    }

    DegreeDays(List<Double> means, double baseF, AirYear air) {
        double swing = yearDeviationC(means);
        int first = 0;
        for (int m = 0; m < 12; m++) {
            int n = Months.days(m);
            months[m] = month(means.get(m), baseF, swing, n);
            double sum = 0;
            for (int d = 0; d < n; d++) {
                days[first + d] = day(air.degF(first + d), means.get(m), baseF, swing, n);
                sum += days[first + d];
            }
            for (int d = 0; d < n; d++) { // each day's share is scaled so that the month agrees
                days[first + d] = sum > 0 ? days[first + d] * months[m] / sum : months[m] / n;
            }
            first += n;
        }
    }

    /** Degree days of a month, January 0. */
    public double month(int month) {
        return months[month];
    }

    /** Degree days of a day, 0 to 364. */
    public double day(int day) {
        return days[day];
    }

    public List<Double> months() {
        List<Double> out = new ArrayList<>();
        for (double m : months) {
            out.add(m);
        }
        return List.copyOf(out);
    }

    public double year() {
        double sum = 0;
        for (double m : months) {
            sum += m;
        }
        return sum;
    }

    /** Degree days of one day from its high and low: base less half their sum, never below 0. */
    public static double ofDay(double highF, double lowF, double baseF) {
        return Math.max(0, baseF - (highF + lowF) / 2);
    }

    /** Deviation of the twelve monthly means about their mean, degC. */
    static double yearDeviationC(List<Double> meansF) {
        double mean = meansF.stream().mapToDouble(Double::doubleValue).sum() / 12;
        double squares =
                meansF.stream().mapToDouble(t -> (t - mean) * (t - mean)).sum();
        return Math.sqrt(squares / 12) / 1.8;
    }

    private static double scatterC(double meanF, double swingC) {
        return Math.max(LEAST_SCATTER, 1.45 - 0.0290 * (meanF - 32) / 1.8 + 0.0664 * swingC);
    }

    private static double month(double meanF, double baseF, double swingC, int n) {
        double s = scatterC(meanF, swingC);
        double h = (baseF - meanF) / 1.8 / (s * Math.sqrt(n));
        return 1.8 * s * Math.pow(n, 1.5) * excess(h);
    }

    /** The same scatter about one day's mean: only its share of the month is used. */
    private static double day(double dayF, double meanF, double baseF, double swingC, int n) {
        double s = scatterC(meanF, swingC) * Math.sqrt(n);
        return 1.8 * s * excess((baseF - dayF) / 1.8 / s);
    }

    /** h/2 + ln cosh(1.698 h) / 3.396 + 0.2041, written so that no h overflows. */
    private static double excess(double h) {
        double x = Math.abs(1.698 * h);
        double lnCosh = x + Math.log1p(Math.exp(-2 * x)) - LN2;
        return Math.max(0, h / 2 + lnCosh / 3.396 + 0.2041);
    }
}
