package longrun.fuel;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;

/**
 * What delivery tickets say of the house. Each ticket after the first pays for what was burnt since the one before, if both
 * filled the tank to the same mark; a partial fill breaks that. Tickets count gallons at 60 degF.
 *
 * @param intervals between tickets, in order
 * @param baseGalPerDay gallons a day without heating, by least squares; empty with fewer than three intervals
 * @param galPerDegreeDay gallons a degree day, likewise
 * @param scale gallons of the tickets over gallons of the model
 * @param kFactor degree days for each gallon delivered: the higher, the more frugal the house; mean of the last four
 *     intervals that are not summer
 */
public record Calibration(
        List<Interval> intervals,
        OptionalDouble baseGalPerDay,
        OptionalDouble galPerDegreeDay,
        OptionalDouble scale,
        OptionalDouble kFactor) {

    /** Degree days a day under which an interval is summer and its K says nothing. */
    private static final double SUMMER = 5;

    private static final int NEWEST = 4;

    /** A ticket that can be used. */
    public record Ticket(LocalDate date, double gallons) {}

    /**
     * Between two fills.
     *
     * @param gallons of the ticket at its end
     * @param degreeDays to base 65
     * @param modelGal what the model burns meanwhile
     */
    public record Interval(
            LocalDate from, LocalDate to, double gallons, double days, double degreeDays, double modelGal) {

        /** Degree days a gallon. */
        public double k() {
            return degreeDays / gallons;
        }
    }

    public Calibration {
        intervals = List.copyOf(intervals);
    }

    /**
     * Fits the tickets.
     *
     * @param degreeDays between two dates, base 65
     * @param model gallons between two dates; NaN where the model knows none
     */
    public static Calibration of(
            List<Ticket> tickets,
            ToDoubleBiFunction<LocalDate, LocalDate> degreeDays,
            ToDoubleBiFunction<LocalDate, LocalDate> model) {
        List<Ticket> sorted = tickets.stream()
                .filter(t -> t.gallons() > 0)
                .sorted(Comparator.comparing(Ticket::date))
                .toList();
        List<Interval> intervals = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            LocalDate from = sorted.get(i - 1).date();
            LocalDate to = sorted.get(i).date();
            double gallons = sorted.get(i).gallons();
            if (from.equals(to)) { // two tickets of one day are one fill
                if (!intervals.isEmpty()) {
                    Interval last = intervals.remove(intervals.size() - 1);
                    intervals.add(new Interval(
                            last.from(),
                            to,
                            last.gallons() + gallons,
                            last.days(),
                            last.degreeDays(),
                            last.modelGal()));
                }
                continue;
            }
            intervals.add(new Interval(
                    from,
                    to,
                    gallons,
                    ChronoUnit.DAYS.between(from, to),
                    degreeDays.applyAsDouble(from, to),
                    model.applyAsDouble(from, to)));
        }
        double[] fit = leastSquares(intervals);
        boolean fits = fit.length == 2;
        return new Calibration(
                intervals,
                fits ? OptionalDouble.of(fit[0]) : OptionalDouble.empty(),
                fits ? OptionalDouble.of(fit[1]) : OptionalDouble.empty(),
                scale(intervals),
                kFactor(intervals));
    }

    private static OptionalDouble scale(List<Interval> intervals) {
        double gallons = intervals.stream().mapToDouble(Interval::gallons).sum();
        double model = intervals.stream().mapToDouble(Interval::modelGal).sum();
        return !intervals.isEmpty() && model > 0 ? OptionalDouble.of(gallons / model) : OptionalDouble.empty();
    }

    private static OptionalDouble kFactor(List<Interval> intervals) {
        List<Interval> winter = intervals.stream()
                .filter(i -> i.degreeDays() / i.days() >= SUMMER)
                .toList();
        return winter.stream()
                .skip(Math.max(0, winter.size() - NEWEST))
                .mapToDouble(Interval::k)
                .average();
    }

    /** gallons = base x days + slope x degree days; none where there are fewer than three or they do not tell them apart. */
    private static double[] leastSquares(List<Interval> intervals) {
        if (intervals.size() < 3) {
            return new double[0];
        }
        double dd = 0;
        double dh = 0;
        double hh = 0;
        double dg = 0;
        double hg = 0;
        for (Interval i : intervals) {
            dd += i.days() * i.days();
            dh += i.days() * i.degreeDays();
            hh += i.degreeDays() * i.degreeDays();
            dg += i.days() * i.gallons();
            hg += i.degreeDays() * i.gallons();
        }
        double det = dd * hh - dh * dh;
        if (!(det > 1e-9 * dd * hh)) {
            return new double[0];
        }
        return new double[] {(dg * hh - hg * dh) / det, (hg * dd - dg * dh) / det};
    }
}
