package longrun.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "199k",
                "199 k",
                "199K",
                "199K Btu/h",
                "199k btu",
                "199kBTUH",
                "199,000 BTU",
                "199000btu",
                "199000 BTUH",
                "199,000 BTU/hr",
                "199,000 Btu/hour",
                "199000 btus",
                "199000 Btu per hour",
                "199,000"
            })
    void aHeatRateAsPeopleWriteItIsStoredAsAPlanWritesIt(String typed) {
        String stored = Typed.quantity(typed, "Btu/h");

        assertThat(Measure.HEAT_RATE.read(stored).btuh()).isEqualTo(199_000);
    }

    @Test
    void aThousandIsMeantAlsoWhereKilowattsStandBesideTheField() {
        assertThat(Measure.HEAT_RATE.read(Typed.quantity("199k", "kW")).btuh()).isEqualTo(199_000);
        assertThat(Typed.quantity("12", "kW")).isEqualTo("12 kW");
    }

    @ParameterizedTest
    @ValueSource(strings = {"199 M", "199 MBtu/h", "199 MMBtu", "199 kWh", "about 199k", "k", "3,7k"})
    void whatMayMeanTwoThingsStaysAsTypedAndIsRefused(String typed) {
        String stored = Typed.quantity(typed, "Btu/h");

        assertThatThrownBy(() -> Measure.HEAT_RATE.read(stored)).isInstanceOf(NotAQuantity.class);
    }

    @Test
    void onlyAHeatRateHasThousandsBehindALetter() {
        assertThat(Typed.quantity("5k", "ft")).isEqualTo("5k");
        assertThat(Typed.quantity("22", "ft")).isEqualTo("22 ft");
        assertThat(Typed.quantity("22 m", "ft")).isEqualTo("22 m");
    }

    @Test
    void whatAPlanReadsAlreadyIsStoredAsTyped() {
        assertThat(Typed.quantity("199 MBH", "Btu/h")).isEqualTo("199 MBH");
        assertThat(Typed.quantity("199,000 Btu/h", "Btu/h")).isEqualTo("199,000 Btu/h");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-20",
                "2026/11/20",
                "11/20/2026",
                "11-20-2026",
                "20/11/2026",
                "20.11.2026",
                "Nov 20 2026",
                "Nov. 20, 2026",
                "November 20th, 2026",
                "20 Nov 2026",
                "20 november 2026"
            })
    void aDateAsPeopleWriteIt(String typed) {
        assertThat(Typed.readDate(typed)).isEqualTo(LocalDate.of(2026, 11, 20));
        assertThat(Typed.date(typed)).isEqualTo("2026-11-20");
    }

    @Test
    void twoNumbersThatMayBothBeTheMonthAreRefusedWithWhatToWrite() {
        assertThat(Typed.date("03/04/2026")).isEqualTo("03/04/2026");
        assertThatThrownBy(() -> Typed.readDate("03/04/2026"))
                .hasMessageContaining("March 4")
                .hasMessageContaining("April 3")
                .hasMessageContaining("2026-03-04")
                .hasMessageContaining("Mar 4 2026");
    }

    /** Which number is the month differs by country: month first in the United States, day first in most others. */
    @ParameterizedTest
    @CsvSource({
        "3/4/2026,2026-03-04,2026-04-03",
        "11/5/2026,2026-11-05,2026-05-11",
        "11.5.2026,2026-11-05,2026-05-11",
        "1/5,01-05,05-01"
    })
    void twoNumbersThatMayBothBeTheMonthGiveTwoDaysToChooseFrom(String typed, String monthFirst, String dayFirst) {
        assertThat(DayReading.both(typed)).extracting(DayReading::stored).containsExactly(monthFirst, dayFirst);
        assertThat(DayReading.both(typed)).allSatisfy(r -> assertThat(r.words()).matches("[A-Z][a-z]+ .*"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"11/25/2026", "25/11/2026", "4/4/2026", "1/31", "01-10", "2026-03-04", "Mar 4 2026", "0/5", ""})
    void aDayThatCannotBeMistakenIsNotAskedAbout(String typed) {
        assertThat(DayReading.both(typed)).isEmpty();
    }

    @Test
    void theTwelfthMayBeTheMonthToo() {
        assertThatThrownBy(() -> Typed.readDate("11/12/2026"))
                .hasMessageContaining("November 12")
                .hasMessageContaining("December 11");
        assertThatThrownBy(() -> Typed.readDate("12/11/2026")).hasMessageContaining("December 11");
        assertThat(Typed.date("11/13/2026")).isEqualTo("2026-11-13");
    }

    @Test
    void aDateRefusedIsToldAsItWasTyped() {
        assertThat(new NotAQuantity("write a date").advice()).isEqualTo("write a date");
        assertThatThrownBy(() -> Typed.readDate(" some time in May ")).hasMessageContaining("\"some time in May\"");
    }

    @Test
    void theFieldsOwnUnitIsLeftOutOfItAndAnyOtherStays() {
        assertThat(Typed.inField("22 ft", "ft")).isEqualTo("22");
        assertThat(Typed.inField("6.7 m", "ft")).isEqualTo("6.7 m");
        assertThat(Typed.inField("12' 6 ft", "ft")).isEqualTo("12' 6 ft");
        assertThat(Typed.inField("8 in w.c.", "in w.c.")).isEqualTo("8");
    }

    @Test
    void twoEqualNumbersAreOneDay() {
        assertThat(Typed.date("4/4/2026")).isEqualTo("2026-04-04");
    }

    @ParameterizedTest
    @ValueSource(strings = {"11/20/26", "2026-02-30", "Nov 2026", "tomorrow", "13/13/2026", "No 3 2026", "0/5/2026"})
    void whatIsNoDateSaysWhatToWrite(String typed) {
        assertThat(Typed.date(typed)).isEqualTo(typed);
        assertThatThrownBy(() -> Typed.readDate(typed))
                .isInstanceOf(NotAQuantity.class)
                .hasMessageContaining("2026-11-20");
    }

    @ParameterizedTest
    @CsvSource({
        "01-10,01-10",
        "Jan 10,01-10",
        "10 January,01-10",
        "1/31,01-31",
        "31/1,01-31",
        "1-5,1-5",
        "Jan,Jan",
        "Jan 1,01-01",
        "12/31,12-31",
        "5/12,5/12",
        "12/5,12/5"
    })
    void aDayOfTheYear(String typed, String stored) {
        assertThat(Typed.dayOfYear(typed)).isEqualTo(stored);
    }

    @ParameterizedTest
    @CsvSource({
        "$2.80,2.80",
        "$ 2.80,2.80",
        "2.80 $,2.80",
        "2.80,2.80",
        "'$1,250.50',1250.50",
        "$2.80/gal,2.80",
        "2.80 a gallon,2.80"
    })
    void aPrice(String typed, String number) {
        assertThat(Typed.price(typed)).hasValueSatisfying(n -> assertThat(n).hasToString(number));
    }

    @Test
    void aNumberIsDigitsWithCommasBetweenThousands() {
        assertThat(Typed.number("1,200")).hasValueSatisfying(n -> assertThat(n).hasToString("1200"));
        assertThat(Typed.number("4.5")).isPresent();
        assertThat(Typed.number("four")).isEmpty();
        assertThat(Typed.number("3,7")).isEmpty();
        assertThat(Typed.number("$4")).isEmpty();
        assertThat(Typed.price("2,80")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "12 1/2; ft; 12-1/2 ft",
                "12\u00bd; ft; 12-1/2 ft",
                "\u00be; in; 3/4 in",
                "12'6; ft; 12' 6\"",
                "12' 6 1/2\"; ft; 12' 6-1/2\"",
                "12\u20196\u201d; ft; 12' 6\"",
                "8\" w.c.; in w.c.; 8 in w.c.",
                "8.5 in. W.C.; in w.c.; 8.5 in w.c.",
                "960 cu ft; ft3; 960 ft3",
                "1,200 cubic feet; ft3; 1,200 ft3"
            })
    void aQuantityAsATapeOrAGaugeIsRead(String typed, String unit, String stored) {
        assertThat(Typed.quantity(typed, unit)).isEqualTo(stored);
    }

    @Test
    void daysMayStandBehindANumberOfThem() {
        assertThat(Typed.number("10 days")).contains(new java.math.BigDecimal("10"));
        assertThat(Typed.number("days")).isEmpty();
    }

    @Test
    void whatATapeWritesIsReadAsAPlanReadsIt() {
        assertThat(Measure.LENGTH.read(Typed.quantity("12'6", "ft")).feet()).isEqualTo(12.5);
        assertThat(Measure.LENGTH.read(Typed.quantity("12 1/2", "ft")).feet()).isEqualTo(12.5);
        assertThat(Measure.LENGTH.read(Typed.quantity("12' 6 1/2\"", "ft")).feet())
                .isCloseTo(12.5 + 0.5 / 12, within(1e-9));
        assertThat(Measure.PRESSURE.read(Typed.quantity("8\" w.c.", "in w.c.")).inWc())
                .isEqualTo(8);
    }
}
