package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longrun.plan.Plan;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** A week at the design temperature about the coldest day, and what the air of a year makes of a fill. */
class ColdSpellTest {

    private static final List<Double> ORCHARD =
            List.of(29.0, 32.0, 40.0, 50.0, 59.0, 68.0, 72.0, 70.0, 63.0, 52.0, 42.0, 32.0);

    private static FuelReport.ColdSpell spell(String piece, String other) {
        return FuelYear.of(Houses.orchard(piece, other)).coldSpell().orElseThrow();
    }

    /** 500 gal read at 62 % and refilled at 30 %: 250 gal from 80 % down, 160 gal from the reading down. */
    @Test
    void aFillAndWhatIsInTheTankLastTheirGallonsOverThoseOfADay() {
        FuelReport.ColdSpell spell = spell("62 %", "62 %");
        double perDay = spell.galPerDay().number();
        assertThat(spell.daysPerFill().number()).isCloseTo(250 / perDay, within(1e-9));
        assertThat(spell.daysFromNow().number()).isCloseTo(160 / perDay, within(1e-9));
        assertThat(spell("62 %", "20 %").daysFromNow().number()).isZero();
    }

    @Test
    void theSpellIsSevenDaysAboutTheColdestAndChangesNoOther() {
        isOfSevenDaysAbout(Houses.orchard(), ORCHARD);
    }

    /** December as cold as January: the coldest day is the last of the year or the first. */
    @Test
    void aSpellAboutTheNewYearIsSevenDaysToo() {
        List<Double> means = List.of(29.0, 35.0, 42.0, 52.0, 62.0, 70.0, 70.0, 62.0, 52.0, 42.0, 35.0, 29.0);
        int coldest = new AirYear(means).coldest();
        assertThat(Math.min(coldest, 365 - coldest)).isLessThan(3);
        String degF = means.stream().map(t -> "\"" + t + " degF\"").collect(Collectors.joining(", "));
        isOfSevenDaysAbout(
                Houses.orchard(
                        "\"29 degF\", \"32 degF\", \"40 degF\", \"50 degF\", \"59 degF\", \"68 degF\", \"72 degF\", \"70 degF\","
                                + " \"63 degF\", \"52 degF\", \"42 degF\", \"32 degF\"",
                        degF),
                means);
    }

    private static void isOfSevenDaysAbout(Plan plan, List<Double> means) {
        FuelReport year = FuelYear.of(plan);
        List<Double> plain = burnt(year.level().orElseThrow());
        List<Double> cold = burnt(year.coldSpell().orElseThrow().level().orElseThrow());
        double perDay = year.coldSpell().orElseThrow().galPerDay().number();
        LocalDate start = year.level().orElseThrow().from();
        int coldest = new AirYear(means).coldest();
        int inSpell = 0;
        for (int i = 0; i < 365; i++) {
            int away = Math.abs(start.plusDays(i).getDayOfYear() - 1 - coldest);
            if (Math.min(away, 365 - away) <= 3) {
                // the same heating each day; hot water and range are the same every day of this house
                assertThat(cold.get(i)).as("day %s", i).isCloseTo(perDay, within(0.01));
                inSpell++;
            } else {
                assertThat(cold.get(i)).as("day %s", i).isCloseTo(plain.get(i), within(1e-6));
            }
        }
        assertThat(inSpell).isEqualTo(7);
    }

    /** Gallons of each day: what the level fell, a delivery put back. */
    private static List<Double> burnt(LevelYear year) {
        List<Double> out = new ArrayList<>();
        double before = year.gallons().get(0);
        for (int i = 0; i < 365; i++) {
            LocalDate date = year.from().plusDays(i);
            double delivered = year.deliveries().stream()
                    .filter(d -> d.date().equals(date))
                    .mapToDouble(LevelYear.Drop::gallons)
                    .sum();
            out.add(before + delivered - year.gallons().get(i + 1));
            before = year.gallons().get(i + 1);
        }
        return out;
    }

    @Test
    void theColdestDayIsOfTheColdestMonth() {
        assertThat(new AirYear(ORCHARD).coldest()).isBetween(0, 30);
        List<Double> turned = new ArrayList<>(ORCHARD.subList(6, 12));
        turned.addAll(ORCHARD.subList(0, 6));
        // the southern half of the earth: its coldest month is July, days 181 to 211
        assertThat(new AirYear(turned).coldest()).isBetween(181, 211);
    }

    @Test
    void aWarmerYearBurnsLess() {
        double plain = FuelYear.gallons(Houses.orchard(), OtherYear.PLAIN)
                .orElseThrow()
                .year();
        double warmer = FuelYear.gallons(Houses.orchard(), new OtherYear(3, 1, Map.of()))
                .orElseThrow()
                .year();
        double colder = FuelYear.gallons(Houses.orchard(), new OtherYear(-3, 1, Map.of()))
                .orElseThrow()
                .year();
        assertThat(warmer).isLessThan(plain);
        assertThat(colder).isGreaterThan(plain);
    }

    @Test
    void withoutTheMonthsAirNoFillIsCountedInDaysAndTheMonthsAreAskedFor() {
        String means = Houses.ORCHARD.substring(
                Houses.ORCHARD.indexOf("\"monthlyMeanTemp\""), Houses.ORCHARD.indexOf("\"coldWater\""));
        FuelReport open = FuelYear.of(Houses.orchard(means, ""));
        assertThat(open.daysPerFill().coldestMonth().isKnown()).isFalse();
        assertThat(open.daysPerFill().coldestMonth().missing())
                .anyMatch(m -> m.field().equals("/site/monthlyMeanTemp"));
    }

    @Test
    void theMonthAFillIsCountedInIsNamedByItsNumber() {
        assertThat(FuelYear.of(Houses.orchard())
                        .daysPerFill()
                        .coldestMonth()
                        .origin()
                        .inputs())
                .anyMatch(i -> i.toString().contains("month 1 / its days"));
    }
}
