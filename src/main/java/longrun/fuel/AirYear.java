package longrun.fuel;

import java.util.List;
import longrun.origin.Months;

/**
 * A smooth year of daily mean air temperature whose monthly means are exactly the entered ones: the running sum of degree
 * and days is led through the month ends by a periodic cubic spline, and each day is a difference of that sum.
 */
public final class AirYear {

    private static final int MONTHS = 12;

    private final double[] days = new double[365];

    /**
     * The year through twelve monthly means, degF.
     *
     * @param means January first
     */
    public AirYear(List<Double> means) {
        double mean = 0;
        for (int m = 0; m < MONTHS; m++) {
            mean += means.get(m) * Months.days(m) / 365;
        }
        double[] sum = new double[MONTHS + 1]; // running sum over the mean, 0 at both ends of the year
        for (int m = 0; m < MONTHS; m++) {
            sum[m + 1] = sum[m] + (means.get(m) - mean) * Months.days(m);
        }
        sum[MONTHS] = 0;
        double[] bend = bends(sum);
        int day = 0;
        for (int m = 0; m < MONTHS; m++) {
            double before = sum[m];
            for (int d = 1; d <= Months.days(m); d++) {
                double now = d == Months.days(m) ? sum[m + 1] : value(sum, bend, m, d);
                days[day++] = mean + now - before;
                before = now;
            }
        }
    }

    /** Second derivatives at the month ends of a periodic spline. */
    private static double[] bends(double[] sum) {
        double[][] a = new double[MONTHS][MONTHS + 1];
        for (int i = 0; i < MONTHS; i++) {
            int last = (i + MONTHS - 1) % MONTHS;
            double left = Months.days(last);
            double right = Months.days(i);
            a[i][last] += left / 6;
            a[i][i] += (left + right) / 3;
            a[i][(i + 1) % MONTHS] += right / 6;
            a[i][MONTHS] = (sum[i + 1] - sum[i]) / right - (sum[i == 0 ? MONTHS : i] - sum[last]) / left;
        }
        return solve(a);
    }

    private static double[] solve(double[][] a) {
        for (int i = 0; i < MONTHS; i++) { // the diagonal leads: no exchange of rows is needed
            for (int r = i + 1; r < MONTHS; r++) {
                double f = a[r][i] / a[i][i];
                for (int c = i; c <= MONTHS; c++) {
                    a[r][c] -= f * a[i][c];
                }
            }
        }
        double[] x = new double[MONTHS];
        for (int i = MONTHS - 1; i >= 0; i--) {
            double rest = a[i][MONTHS];
            for (int c = i + 1; c < MONTHS; c++) {
                rest -= a[i][c] * x[c];
            }
            x[i] = rest / a[i][i];
        }
        return x;
    }

    private static double value(double[] sum, double[] bend, int m, double d) {
        double h = Months.days(m);
        double u = h - d;
        double b0 = bend[m];
        double b1 = bend[(m + 1) % MONTHS];
        return b0 * u * u * u / (6 * h)
                + b1 * d * d * d / (6 * h)
                + (sum[m] / h - b0 * h / 6) * u
                + (sum[m + 1] / h - b1 * h / 6) * d;
    }

    /** Mean air of a day, 0 to 364, degF. */
    public double degF(int day) {
        return days[day];
    }

    /** The coldest day, 0 to 364. */
    public int coldest() {
        int best = 0;
        for (int d = 1; d < days.length; d++) {
            best = days[d] < days[best] ? d : best;
        }
        return best;
    }
}
