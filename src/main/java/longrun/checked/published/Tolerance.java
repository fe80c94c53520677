package longrun.checked.published;

import longrun.origin.DataRow;
import longrun.origin.PlainNumber;
import longrun.quantity.Show;

/**
 * How far the program's figure may be from a published one.
 *
 * @param most the greatest difference, in the figure's own unit or in percent; 0 where both must be the same
 * @param percent whether it is in percent of the published figure
 */
public record Tolerance(double most, boolean percent) {

    static Tolerance of(DataRow row) {
        String text = row.text("within");
        boolean percent = text.endsWith("%");
        double most =
                PlainNumber.parse(percent ? text.substring(0, text.length() - 1).strip() : text);
        if (!(most >= 0)) {
            throw row.fault("within", "'" + text + "' is not a tolerance");
        }
        return new Tolerance(most, percent);
    }

    /** How far a figure is from the published one, in the unit of {@link #most}; NaN where the figure is not known. */
    public double difference(double published, double ours) {
        double apart = Math.abs(ours - published);
        return percent ? 100 * apart / Math.abs(published) : apart;
    }

    /** Whether a difference is within the tolerance; NaN is not. */
    public boolean holds(double difference) {
        return difference <= most * (1 + 1e-9) + 1e-12;
    }

    /** A difference in words. */
    public String words(double difference, String unit) {
        if (difference < 1e-9) {
            return "none";
        }
        String number = difference < 0.0005 ? "under 0.001" : Show.plain(rounded(difference));
        return number + (percent ? " %" : unit.isEmpty() ? "" : " " + unit);
    }

    /** Rounded to three significant digits. */
    private static double rounded(double value) {
        double step = Math.pow(10, Math.floor(Math.log10(value)) - 2);
        return Math.rint(value / step) * step;
    }
}
