package longrun.fuel;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import longrun.plan.Plan;

/** The plan's delivery tickets held against its climate and the model of its year. */
record Tickets(Plan plan, Optional<List<Double>> means, Optional<AirYear> air, YearUse use, double[] days) {

    Optional<Calibration> calibration() {
        List<Calibration.Ticket> tickets = new ArrayList<>();
        for (Plan.Delivery d : plan.deliveries()) {
            if (d.date().isKnown() && d.volume().isKnown()) {
                tickets.add(new Calibration.Ticket(
                        d.date().findValue().orElseThrow(),
                        d.volume().findValue().orElseThrow().gallons()));
            }
        }
        if (tickets.size() < 2 || means.isEmpty()) {
            return Optional.empty();
        }
        DegreeDays degrees = new DegreeDays(means.get(), DegreeDays.PUBLISHED_BASE_F, air.orElseThrow());
        double[] model = use.total().isKnown() ? days : new double[0];
        return Optional.of(Calibration.of(
                tickets,
                (from, to) -> between(from, to, degrees::day),
                (from, to) -> model.length == 0 ? Double.NaN : between(from, to, d -> model[d])));
    }

    /** Sum over the days from one date up to the day before another. */
    private static double between(LocalDate from, LocalDate to, IntToDoubleFunction day) {
        long count = ChronoUnit.DAYS.between(from, to);
        double year = 0;
        for (int d = 0; d < 365; d++) {
            year += day.applyAsDouble(d);
        }
        long years = count / 365; // tickets centuries apart are summed by the year
        double sum = years * year;
        LocalDate rest = from.plusDays(years * 365);
        for (long i = 0; i < count - years * 365; i++) {
            sum += day.applyAsDouble(Calendar.day(rest.plusDays(i)));
        }
        return sum;
    }
}
