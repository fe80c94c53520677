package longrun.fuel.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.fuel.Calibration;
import longrun.fuel.YearGallons;

/**
 * What past fills say about the house: one scale for the whole year, and how far single fills differ from it.
 *
 * @param scale gallons of the tickets divided by the gallons worked out from the entries
 * @param spread share by which a fill may differ from the scaled year
 * @param past the time up to each fill after the first
 */
public record TicketFit(double scale, double spread, List<Past> past) {

    /** A truck fills to the same mark within this share of the capacity (common practice). */
    static final double MARK_SHARE = 0.01;

    /**
     * The time between two fills.
     *
     * @param gallons on the ticket at its end
     * @param workedOutGal gallons by the entries alone
     * @param predictedGal gallons as predicted from the fills before it; empty for the first
     */
    public record Past(LocalDate from, LocalDate to, double gallons, double workedOutGal, OptionalDouble predictedGal) {

        /** By how much the ticket was over the prediction, as a share of it; empty where there was none. */
        public OptionalDouble miss() {
            return predictedGal.isPresent() && predictedGal.getAsDouble() > 0
                    ? OptionalDouble.of(gallons / predictedGal.getAsDouble() - 1)
                    : OptionalDouble.empty();
        }
    }

    public TicketFit {
        past = List.copyOf(past);
    }

    /**
     * The fit of a calibration; empty where no two fills stand against a known year.
     *
     * @param waterGal capacity the fills bring to their mark, 0 where it is not known
     */
    static Optional<TicketFit> of(Calibration calibration, double waterGal) {
        OptionalDouble scale = calibration.scale();
        if (scale.isEmpty() || !(scale.getAsDouble() > 0) || Double.isInfinite(scale.getAsDouble())) {
            return Optional.empty();
        }
        List<Past> past = new ArrayList<>();
        double gallons = 0;
        double workedOut = 0;
        for (Calibration.Interval i : calibration.intervals()) {
            OptionalDouble predicted =
                    workedOut > 0 ? OptionalDouble.of(gallons / workedOut * i.modelGal()) : OptionalDouble.empty();
            past.add(new Past(i.from(), i.to(), i.gallons(), i.modelGal(), predicted));
            gallons += i.gallons();
            workedOut += i.modelGal();
        }
        double marks = gallons > 0 ? Math.sqrt(2) * MARK_SHARE * waterGal / gallons : 0;
        return Optional.of(new TicketFit(
                scale.getAsDouble(), Math.min(0.9, Math.max(scatter(past, scale.getAsDouble()), marks)), past));
    }

    /** Standard deviation of the fills about the scaled year, weighted by their gallons; 0 for a single one. */
    private static double scatter(List<Past> past, double scale) {
        double sum = 0;
        double weights = 0;
        for (Past p : past) {
            double workedOut = scale * p.workedOutGal();
            if (workedOut > 0) {
                double off = p.gallons() / workedOut - 1;
                sum += workedOut * off * off;
                weights += workedOut;
            }
        }
        int n = past.size();
        return n > 1 && weights > 0 ? Math.sqrt(sum / weights * n / (n - 1)) : 0;
    }

    /**
     * What the next fill will take if it comes on a day, with its range.
     *
     * @param workedOut the year by the entries alone
     */
    public Optional<Prediction> predict(YearGallons workedOut, LocalDate on) {
        LocalDate last = past.get(past.size() - 1).to();
        if (!on.isAfter(last)) {
            return Optional.empty();
        }
        double gallons = scale * workedOut.between(last, on);
        return Optional.of(new Prediction(on, gallons, new Range(gallons * (1 - spread), gallons * (1 + spread))));
    }

    /** A predicted fill. */
    public record Prediction(LocalDate on, double gallons, Range range) {}
}
