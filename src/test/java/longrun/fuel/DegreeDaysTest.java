package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.origin.Months;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Degree days by the formula of Erbs and others (1983) against published normals, and their spread over the days; daily
 * temperatures a person brings.
 */
class DegreeDaysTest {

    private static final String[] MONTHS = {
        "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
    };

    private static DataRow row(String item) {
        return DataFile.read("climate/climate-samples.csv").rows().stream()
                .filter(r -> r.text("place").equals("Burlington VT")
                        && r.text("item").equals(item))
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> burlington() {
        List<Double> out = new ArrayList<>();
        for (String m : MONTHS) {
            out.add(row("monthly_mean_f").number(m));
        }
        return out;
    }

    @Test
    void thePublishedYearToBaseSixtyFiveIsMetWithinTwoPercent() {
        DegreeDays days = new DegreeDays(burlington(), 65);
        assertThat(days.year()).isCloseTo(row("hdd65").number("annual"), Percentage.withPercentage(2));
    }

    /** Another set of years lies behind the published months than behind the means: 50 degF-days a month part them. */
    @Test
    void thePublishedMonthsToBaseSixtyFiveAreMetWithinNinetyFive() {
        DegreeDays days = new DegreeDays(burlington(), 65);
        for (int m = 0; m < 12; m++) {
            assertThat(days.month(m)).as(MONTHS[m]).isCloseTo(row("hdd65").number(MONTHS[m]), within(95.0));
        }
    }

    @Test
    void thePublishedYearToBaseFiftyIsMetWithinThreePercent() {
        assertThat(new DegreeDays(burlington(), 50).year())
                .isCloseTo(row("hdd50").number("annual"), Percentage.withPercentage(3));
    }

    @Test
    void everyPublishedPlaceHasMoreDegreeDaysToAHigherBase() {
        for (String place : List.of("boston", "chicago", "minneapolis")) {
            double before = 0;
            for (DataRow r : DataFile.read("climate/degree-days-by-base.csv").rows()) {
                assertThat(r.number(place)).isGreaterThan(before);
                before = r.number(place);
            }
        }
    }

    @Test
    void degreeDaysRiseWithTheBaseAndWithTheCold() {
        double base = new DegreeDays(burlington(), 65).year();
        assertThat(new DegreeDays(burlington(), 62).year()).isLessThan(base);
        List<Double> colder = burlington().stream().map(t -> t - 1).toList();
        assertThat(new DegreeDays(colder, 65).year()).isGreaterThan(base);
    }

    @Test
    void theDaysOfAMonthSumToTheMonthAndTheMonthsToTheYear() {
        DegreeDays days = new DegreeDays(burlington(), 65);
        double year = 0;
        int day = 0;
        for (int m = 0; m < 12; m++) {
            double sum = 0;
            for (int d = 0; d < Months.days(m); d++) {
                assertThat(days.day(day)).isNotNegative();
                sum += days.day(day++);
            }
            assertThat(sum).isCloseTo(days.month(m), within(1e-9));
            year += sum;
        }
        assertThat(year).isCloseTo(days.year(), within(1e-8));
    }

    @Test
    void theSmoothYearKeepsTheMonthlyMeans() {
        long seed = 20261001L;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            List<Double> means = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
                means.add(50 - 30 * Math.cos(2 * Math.PI * m / 12) * random.nextDouble() + 10 * random.nextGaussian());
            }
            AirYear air = new AirYear(means);
            int day = 0;
            for (int m = 0; m < 12; m++) {
                double sum = 0;
                for (int d = 0; d < Months.days(m); d++) {
                    sum += air.degF(day++);
                }
                assertThat(sum / Months.days(m)).isCloseTo(means.get(m), within(1e-9));
            }
        }
    }

    @Test
    void theSmoothYearHasNoJumps() {
        AirYear air = new AirYear(burlington());
        for (int d = 0; d < 365; d++) {
            assertThat(Math.abs(air.degF(d) - air.degF((d + 1) % 365))).isLessThan(1.0);
        }
    }

    @Test
    void anyClimateThatCanBeEnteredGivesFiniteDegreeDays() {
        for (double t : new double[] {-100, -40, 0, 65, 120, 300}) {
            DegreeDays days = new DegreeDays(java.util.Collections.nCopies(12, t), 65);
            assertThat(days.year()).isFinite().isNotNegative();
            if (t < 0) {
                assertThat(days.year()).isCloseTo(365 * (65 - t), Percentage.withPercentage(0.5));
            }
        }
    }

    @Test
    void aDaysDegreeDaysTakeHalfOfHighPlusLow() {
        assertThat(DegreeDays.ofDay(40, 20, 65)).isEqualTo(35);
        assertThat(DegreeDays.ofDay(80, 60, 65)).isZero();
        assertThat(DegreeDays.ofDay(66, 64, 65)).isZero();
    }

    @Test
    void twoDaysGiveNoYearOfMeans() {
        DailyTemperatures t =
                DailyTemperatures.read("days.csv", "date,high,low\n2026-01-01,40,20\r\n2026-01-02, 30, -10\n");
        assertThat(t.errors()).isEmpty();
        assertThat(t.days()).extracting(DailyTemperatures.Day::meanF).containsExactly(30.0, 10.0);
        assertThat(t.monthlyMeans()).isEmpty();
    }

    @Test
    void aWholeYearOfDaysGivesTwelveMeans() {
        StringBuilder csv = new StringBuilder();
        for (LocalDate d = LocalDate.of(2025, 1, 1); d.getYear() == 2025; d = d.plusDays(1)) {
            csv.append(String.format(Locale.ROOT, "%s,%d,%d%n", d, 20 + d.getMonthValue(), d.getMonthValue()));
        }
        assertThat(DailyTemperatures.read("days.csv", csv.toString()).monthlyMeans())
                .hasValueSatisfying(
                        m -> assertThat(m).hasSize(12).startsWith(11.0).endsWith(22.0));
    }

    @Test
    void everyErrorOfADayFileIsNamedAtOnceByRowAndColumn() {
        DailyTemperatures t = DailyTemperatures.read(
                "days.csv",
                "date,high,low\n2026-13-01,40,20\n2026-01-02,x,20\n2026-01-03,10,20\n2026-01-03,40\n2026-01-04,40,900\n2026-01-05,3,2\n2026-01-05,3,2");
        assertThat(t.days()).isEmpty();
        assertThat(t.errors()).hasSize(6);
        assertThat(t.errors().get(0)).startsWith("days.csv:2:date:");
        assertThat(t.errors().get(1)).startsWith("days.csv:3:high:");
        assertThat(t.errors().get(2)).startsWith("days.csv:4:high:");
        assertThat(t.errors().get(3)).startsWith("days.csv:5:date:");
        assertThat(t.errors().get(4)).startsWith("days.csv:6:low:");
        assertThat(t.errors().get(5)).startsWith("days.csv:8:date:");
        assertThat(DailyTemperatures.read("days.csv", "").errors()).hasSize(1);
    }
}
