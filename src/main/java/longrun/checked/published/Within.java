package longrun.checked.published;

import longrun.origin.DataRow;
import longrun.origin.PlainNumber;
import longrun.quantity.Show;

/**
 * How far our figure may be from a published one.
 *
 * @param most the greatest difference, in the figure's own unit, or in hundredths of it; 0 where both must be the same
 * @param percent whether it is in hundredths of the published figure
 */
public record Within(double most, boolean percent) {

    static Within of(DataRow row) {
        String text = row.text("within");
        boolean percent = text.endsWith("%");
        double most =
                PlainNumber.parse(percent ? text.substring(0, text.length() - 1).strip() : text);
        if (!(most >= 0)) {
            throw row.fault("within", "'" + text + "' is no difference");
        }
        return new Within(most, percent);
    }

    /** How far a figure is from the published one, as {@link #most} is counted. */
    public double difference(double published, double ours) {
        double apart = Math.abs(ours - published);
        return percent ? 100 * apart / Math.abs(published) : apart;
    }

    /** Whether a difference is small enough; a figure that is not known is not. */
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

    /** To three digits that say something. */
    private static double rounded(double value) {
        double step = Math.pow(10, Math.floor(Math.log10(value)) - 2);
        return Math.rint(value / step) * step;
    }
}
