package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import longrun.Samples;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** Tickets: K in degree days a gallon, base load by least squares, gallons billed at 60 degF. */
class CalibrationTest {

    private static double degreeDays(LocalDate from, LocalDate to) {
        double sum = 0;
        for (LocalDate d = from; d.isBefore(to); d = d.plusDays(1)) {
            sum += 20 + 15 * Math.cos(2 * Math.PI * d.getDayOfYear() / 365.0);
        }
        return sum;
    }

    private static List<Calibration.Ticket> tickets(double base, double slope, int... gaps) {
        List<Calibration.Ticket> out = new ArrayList<>();
        LocalDate date = LocalDate.of(2025, 9, 1);
        out.add(new Calibration.Ticket(date, 100));
        for (int gap : gaps) {
            LocalDate next = date.plusDays(gap);
            out.add(new Calibration.Ticket(next, base * gap + slope * degreeDays(date, next)));
            date = next;
        }
        return out;
    }

    @Test
    void baseLoadAndGallonsADegreeDayComeBack() {
        Calibration c = Calibration.of(tickets(0.4, 0.17, 90, 60, 40, 50), CalibrationTest::degreeDays, (from, to) ->
                (double) ChronoUnit.DAYS.between(from, to));
        assertThat(c.baseGalPerDay()).hasValueCloseTo(0.4, within(1e-6));
        assertThat(c.galPerDegreeDay()).hasValueCloseTo(0.17, within(1e-8));
        assertThat(c.intervals()).hasSize(4);
    }

    @Test
    void fewerThanThreeIntervalsGiveOneScale() {
        Calibration c = Calibration.of(
                tickets(0, 0.2, 60, 40), CalibrationTest::degreeDays, (from, to) -> 0.1 * degreeDays(from, to));
        assertThat(c.baseGalPerDay()).isEmpty();
        assertThat(c.scale()).hasValueCloseTo(2.0, within(1e-9));
    }

    @Test
    void oneTicketTellsNothing() {
        Calibration c = Calibration.of(tickets(0, 0.2), CalibrationTest::degreeDays, (a, b) -> 1);
        assertThat(c.intervals()).isEmpty();
        assertThat(c.scale()).isEmpty();
        assertThat(c.kFactor()).isEmpty();
    }

    /** K = degree days elapsed / gallons delivered: a frugal house has the higher K. */
    @Test
    void kIsDegreeDaysAGallonAndHigherForTheFrugalHouse() {
        Calibration.Interval i =
                new Calibration.Interval(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 2, 1), 200, 31, 1100, 190);
        assertThat(i.k()).isEqualTo(5.5);
        Calibration wasteful = Calibration.of(tickets(0, 0.2, 40, 40, 40), CalibrationTest::degreeDays, (a, b) -> 1);
        Calibration frugal = Calibration.of(tickets(0, 0.1, 40, 40, 40), CalibrationTest::degreeDays, (a, b) -> 1);
        assertThat(wasteful.kFactor()).hasValueCloseTo(5.0, within(1e-9));
        assertThat(frugal.kFactor().orElseThrow())
                .isGreaterThan(wasteful.kFactor().orElseThrow());
    }

    @Test
    void theModelIsHeldAgainstTheTickets() {
        String plan = Houses.ORCHARD.replace(
                "\"use\": {",
                "\"deliveries\": [ { \"date\": \"2026-01-05\", \"volume\": \"240 gal\" }, { \"date\": \"2026-02-14\", \"volume\": \"250 gal\" } ], \"use\": {");
        Calibration c = FuelYear.of(Samples.plan(plan)).calibration().orElseThrow();
        assertThat(c.intervals()).singleElement().satisfies(i -> {
            assertThat(i.days()).isEqualTo(40);
            assertThat(i.modelGal()).isBetween(200.0, 280.0);
        });
        assertThat(c.scale().orElseThrow()).isBetween(0.8, 1.25);
    }
}
