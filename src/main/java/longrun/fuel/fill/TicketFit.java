package longrun.fuel.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.fuel.Calibration;
import longrun.fuel.YearGallons;

/**
 * What past fills say of the house: one scale for the whole year, and how far single fills lie from it.
 *
 * @param scale gallons of the tickets over the gallons reckoned
 * @param spread share by which a fill may lie off the scaled year
 * @param past each fill after the first
 */
public record TicketFit(double scale, double spread, List<Past> past) {

    /** A truck stops within this share of the capacity of the same mark (common practice). */
    static final double MARK_SHARE = 0.01;

    /**
     * Between two fills.
     *
     * @param gallons on the ticket at its end
     * @param reckonedGal by the entries alone
     * @param foretoldGal by the fills before it; empty for the first
     */
    public record Past(LocalDate from, LocalDate to, double gallons, double reckonedGal, OptionalDouble foretoldGal) {

        /** How far the ticket lay over what was foretold, as a share of it; empty where nothing was. */
        public OptionalDouble miss() {
            return foretoldGal.isPresent() && foretoldGal.getAsDouble() > 0
                    ? OptionalDouble.of(gallons / foretoldGal.getAsDouble() - 1)
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
        double reckoned = 0;
        for (Calibration.Interval i : calibration.intervals()) {
            OptionalDouble foretold =
                    reckoned > 0 ? OptionalDouble.of(gallons / reckoned * i.modelGal()) : OptionalDouble.empty();
            past.add(new Past(i.from(), i.to(), i.gallons(), i.modelGal(), foretold));
            gallons += i.gallons();
            reckoned += i.modelGal();
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
            double reckoned = scale * p.reckonedGal();
            if (reckoned > 0) {
                double off = p.gallons() / reckoned - 1;
                sum += reckoned * off * off;
                weights += reckoned;
            }
        }
        int n = past.size();
        return n > 1 && weights > 0 ? Math.sqrt(sum / weights * n / (n - 1)) : 0;
    }

    /**
     * What the next fill will take if it comes on a day, with its range.
     *
     * @param reckoned the year by the entries alone
     */
    public Optional<Foretold> foretell(YearGallons reckoned, LocalDate on) {
        LocalDate last = past.get(past.size() - 1).to();
        if (!on.isAfter(last)) {
            return Optional.empty();
        }
        double gallons = scale * reckoned.between(last, on);
        return Optional.of(new Foretold(on, gallons, new Range(gallons * (1 - spread), gallons * (1 + spread))));
    }

    /** A fill before it comes. */
    public record Foretold(LocalDate on, double gallons, Range range) {}
}
