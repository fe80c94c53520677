package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                (from, to) -> Calendar.sum(from, to, degrees::day),
                (from, to) -> model.length == 0 ? Double.NaN : Calendar.sum(from, to, d -> model[d])));
    }
}
