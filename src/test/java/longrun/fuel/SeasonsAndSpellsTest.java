package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.origin.Origin;
import longrun.tank.Houses;
import org.junit.jupiter.api.Test;

/** A year by its quarters, its days counted over any number of years, and spells that run over the new year. */
class SeasonsAndSpellsTest {

    private static final Figure USABLE = Figure.given("usable", 250, "gal", "as read", Confidence.OWN);

    /** December to February of 62, 93 and 70 gal in 31, 31 and 28 days is 2.5 gal a day: 250 gal last 100 days. */
    @Test
    void aFillLastsTheDaysOfEachQuartersMeanUse() {
        Months months = Months.known(
                "all uses",
                List.of(93.0, 70.0, 31.0, 31.0, 30.0, 10.0, 18.2, 18.0, 0.0, 0.0, 0.0, 62.0),
                "gal",
                "sum",
                Confidence.COMPUTED,
                List.of());
        List<Figure> quarters = SeasonFills.of(USABLE, months);
        assertThat(quarters).hasSize(4);
        assertThat(quarters.get(0).name()).isEqualTo("days a fill lasts, December to February");
        assertThat(quarters.get(0).number()).isCloseTo(250 / 2.5, within(1e-9));
        assertThat(quarters.get(1).number()).isCloseTo(250 / (92.0 / 92), within(1e-9));
        assertThat(quarters.get(2).number()).isCloseTo(250 / (46.2 / 92), within(1e-9));
        // nothing burnt from September to November: no number of days
        assertThat(quarters.get(3).isKnown()).isFalse();
    }

    @Test
    void aYearNotKnownHasNoQuarters() {
        Missing lacking = new Missing("/use/heating/0/designLoad", "the heat the house loses");
        assertThat(SeasonFills.of(USABLE, Months.unknown("all uses", "gal", List.of(lacking))))
                .hasSize(4)
                .allSatisfy(f -> assertThat(f.missing()).containsExactly(lacking));
    }

    @Test
    void daysAreSummedOverAnyNumberOfYears() {
        LocalDate from = LocalDate.of(2026, 1, 1);
        assertThat(Calendar.sum(from, from.plusDays(10), d -> 2)).isEqualTo(20);
        assertThat(Calendar.sum(from, from.plusDays(365), d -> 2)).isEqualTo(730);
        assertThat(Calendar.sum(from, from.plusDays(2 * 365 + 10), d -> 2)).isEqualTo(1480);
        assertThat(Calendar.sum(from, from, d -> 2)).isZero();
        // ten days from the first of March are days 59 to 68 of the year
        assertThat(Calendar.sum(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 11), d -> d))
                .isEqualTo(635);
    }

    @Test
    void aDayOfTheYearLiesInItsMonth() {
        assertThat(Calendar.month(0)).isZero();
        assertThat(Calendar.month(30)).isZero();
        assertThat(Calendar.month(31)).isEqualTo(1);
        assertThat(Calendar.month(58)).isEqualTo(1);
        assertThat(Calendar.month(59)).isEqualTo(2);
        assertThat(Calendar.month(364)).isEqualTo(11);
    }

    @Test
    void aSpellMayRunOverTheNewYear() {
        LevelYear.Spell winter = new LevelYear.Spell(MonthDay.of(12, 20), MonthDay.of(1, 10));
        assertThat(winter.covers(LocalDate.of(2026, 12, 20))).isTrue();
        assertThat(winter.covers(LocalDate.of(2027, 1, 10))).isTrue();
        assertThat(winter.covers(LocalDate.of(2026, 12, 19))).isFalse();
        assertThat(winter.covers(LocalDate.of(2027, 1, 11))).isFalse();
        LevelYear.Spell january = new LevelYear.Spell(MonthDay.of(1, 4), MonthDay.of(1, 17));
        assertThat(january.covers(LocalDate.of(2027, 1, 4))).isTrue();
        assertThat(january.covers(LocalDate.of(2027, 1, 17))).isTrue();
        assertThat(january.covers(LocalDate.of(2027, 1, 3))).isFalse();
        assertThat(january.covers(LocalDate.of(2027, 1, 18))).isFalse();
    }

    @Test
    void everyFigureOfTheYearSaysWhereItIsFromByItsName() {
        assertThat(FuelYear.of(Houses.orchard()).origins())
                .extracting(Origin::figure)
                .contains(
                        "degree days, base 65",
                        "gallons a year",
                        "heating",
                        "gallons on a day at the design temperature",
                        "a fill at the design temperature",
                        "days from now at the design temperature",
                        "on-demand-only");
        assertThat(FuelYear.of(Houses.orchard("\"efficiency\": \"95 %\", ", "")).missing())
                .extracting(Missing::field)
                .anyMatch(f -> f.endsWith("/efficiency"));
    }
}
