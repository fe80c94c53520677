package longrun.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How a person may write a quantity, and what is refused with what to write instead. */
class MeasureTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            12 ft        | 12
            12.5ft       | 12.5
            .5 ft        | 0.5
            1,250 ft     | 1250
            1-1/2 ft     | 1.5
            3/8 in       | 0.03125
            5 ft 6 in    | 5.5
            5' 6"        | 5.5
            5'6"         | 5.5
            5 ft 6-1/2 in | 5.5416666666666667
            18.288 m     | 60
            6 FT         | 6
            7 '          | 7
            30.48 cm     | 1
            304.8 mm     | 1
            """)
    void aLengthIsReadInTheUnitsOfTheTrade(String written, double feet) {
        assertThat(Measure.LENGTH.read(written).feet()).isCloseTo(feet, within(1e-12 * Math.max(1, feet)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            199,000 Btu/h | 199000
            199000 btuh   | 199000
            199 kBtu/h    | 199000
            199 MBH       | 199000
            199mbh        | 199000
            58.32 kW      | 198996.1
            1 MJ/h        | 947.817
            """)
    void aHeatRateIsReadInTheUnitsOfTheTrade(String written, double btuh) {
        assertThat(Measure.HEAT_RATE.read(written).btuh()).isCloseTo(btuh, within(btuh * 1e-6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            3,7 ft        | write 3.7
            22            | one of ft, in, m, cm, mm
            12 psi        | not a unit of length
            -3 ft         | below zero
            1e5 ft        | not a unit of length
            NaN ft        | is not a length
            twelve ft     | is not a length
            5 ft 14 in    | under 12
            5 ft 12 in    | under 12
            long ft       | such as 12 ft
            100,001 ft    | more than 100,000 ft
            1 1/2 ft      | 1-1/2
            1/0 ft        | divides by zero
            12,34 ft      | write 12.34
            1,23,456 ft   | is not a number
            1.2.3 ft      | is not a number
            ``            | is not a length
            1.234,5 ft    | is not a number
            """)
    void whatIsNoLengthIsRefusedWithWhatToWrite(String written, String words) {
        assertThatThrownBy(() -> Measure.LENGTH.read(written))
                .isInstanceOf(NotAQuantity.class)
                .hasMessageContaining(words);
    }

    @ParameterizedTest
    @CsvSource({"199 MBtu/h", "199 MMBtu/h", "199 M Btu/h", "1 MkW"})
    void mBeforeAUnitIsRefusedBecauseItMeansTwoThings(String written) {
        assertThatThrownBy(() -> Measure.HEAT_RATE.read(written))
                .hasMessageContaining("thousand")
                .hasMessageContaining("million");
    }

    @Test
    void onlyTemperatureAndElevationGoBelowZero() {
        assertThat(Measure.TEMPERATURE.read("-40 degF").degF()).isEqualTo(-40);
        assertThat(Measure.TEMPERATURE.read("-40 °C").degF()).isCloseTo(-40, within(1e-12));
        assertThat(Measure.ELEVATION.read("-200 ft").feet()).isEqualTo(-200);
        assertThatThrownBy(() -> Measure.PRESSURE.read("-1 psi")).hasMessageContaining("below zero");
        assertThatThrownBy(() -> Measure.TEMPERATURE.read("-101 degF")).isInstanceOf(NotAQuantity.class);
        assertThatThrownBy(() -> Measure.TEMPERATURE.read("301 F")).isInstanceOf(NotAQuantity.class);
    }

    @Test
    void noHouseStandsLowerThanTheLowestLandOrHigherThanTheHighest() { // memory: -1,430 ft and 29,032 ft
        assertThat(Measure.ELEVATION.read("-1,430 ft").feet()).isEqualTo(-1430);
        assertThat(Measure.ELEVATION.read("29,032 ft").feet()).isEqualTo(29_032);
        assertThatThrownBy(() -> Measure.ELEVATION.read("-99,999 ft")).hasMessageContaining("less than any elevation");
        assertThatThrownBy(() -> Measure.ELEVATION.read("99,999 ft")).hasMessageContaining("more than 30,000 ft");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            100,000 ft        | 100,000.1 ft
            1,000,000,000 Btu/h | 1,000,000,001 Btu/h
            300 psi           | 300.1 psi
            1,000,000 gal     | 1,000,001 gal
            """)
    void absurdQuantitiesAreRefused(String greatest, String absurd) {
        Measure<?> measure = List.of(Measure.LENGTH, Measure.HEAT_RATE, Measure.PRESSURE, Measure.VOLUME).stream()
                .filter(m -> m.units().stream().anyMatch(u -> greatest.endsWith(" " + u.name())))
                .findFirst()
                .orElseThrow();
        measure.read(greatest);
        assertThatThrownBy(() -> measure.read(absurd)).isInstanceOf(NotAQuantity.class);
    }

    @Test
    void theCountryTheProgramRunsInChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(Measure.PRESSURE.read("11 IN W.C.").inWc()).isCloseTo(11, within(1e-12));
            Locale.setDefault(Locale.GERMANY);
            assertThat(Show.btuh(199_000)).isEqualTo("199,000 Btu/h");
            assertThat(Show.feet(53.245)).isEqualTo("53.2 ft");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theColdestTemperatureThatIsAskedForIsStillRead() {
        assertThat(Measure.TEMPERATURE.read("-100 degF").degF()).isEqualTo(-100);
        assertThat(Measure.TEMPERATURE.read("300 degF").degF()).isEqualTo(300);
    }

    @Test
    void aNumberMayBeLongButNotWithoutEnd() {
        String forty = "0." + "3".repeat(38);
        assertThat(NumberText.read(forty)).isCloseTo(1 / 3.0, within(1e-12));
        assertThatThrownBy(() -> NumberText.read(forty + "3")).hasMessageContaining("41 characters");
        assertThat(Measure.LENGTH.read(" ".repeat(60) + "12 ft").feet()).isEqualTo(12);
        assertThat(Measure.LENGTH
                        .read("12" + " ".repeat(Measure.LONGEST - 4) + "ft")
                        .feet())
                .isEqualTo(12);
        assertThatThrownBy(() -> Measure.LENGTH.read("12" + " ".repeat(Measure.LONGEST - 3) + "ft"))
                .hasMessageContaining("too long");
    }

    @Test
    void whatIsNoNumberIsToldAsItWasWrittenUpToFortySigns() {
        assertThatThrownBy(() -> NumberText.read("")).hasMessageContaining("there is no number");
        assertThatThrownBy(() -> NumberText.read("1.2.3")).hasMessageContaining("\"1.2.3\" is not a number");
        assertThat(NumberText.shortened("x".repeat(40))).isEqualTo("x".repeat(40));
        assertThat(NumberText.shortened("x".repeat(41))).isEqualTo("x".repeat(40) + "...");
    }

    /** A yard is 3 ft (NIST Handbook 44, appendix C). */
    @Test
    void aUnitWithoutAnOffsetCountsFromZero() {
        Unit yard = Unit.of("yd", 3, "yards");
        assertThat(yard.toCanonical(2)).isEqualTo(6);
        assertThat(yard.fromCanonical(6)).isEqualTo(2);
        assertThat(Measure.PRESSURE.name()).isEqualTo("pressure");
    }

    static List<Measure<?>> measures() {
        return List.of(
                Measure.LENGTH,
                Measure.ELEVATION,
                Measure.PRESSURE,
                Measure.HEAT_RATE,
                Measure.VOLUME,
                Measure.TEMPERATURE,
                Measure.FLOW,
                Measure.MASS,
                Measure.RATIO,
                Measure.HEATING_VALUE,
                Measure.HEAT_LOSS,
                Measure.TIME,
                Measure.WIRE,
                Measure.AREA,
                Measure.AIR_CHANGE);
    }

    @ParameterizedTest
    @MethodSource("measures")
    void everyUnitGoesThereAndBack(Measure<?> measure) {
        for (Unit unit : measure.units()) {
            double number = 7.25;
            Quantity q = measure.read(number + " " + unit.name());
            assertThat(unit.fromCanonical(q.canonical())).isCloseTo(number, within(1e-9));
            for (String alias : unit.aliases()) {
                assertThat(measure.read("7.25 " + alias).canonical()).isEqualTo(q.canonical());
            }
        }
    }

    static List<DoubleFunction<? extends Quantity>> makers() {
        return List.of(
                Length::ofFeet,
                Pressure::ofPsi,
                HeatRate::ofBtuh,
                Volume::new,
                Temperature::ofDegF,
                Flow::ofGpm,
                Mass::new,
                Ratio::new,
                TimeSpan::new,
                HeatLoss::new,
                HeatingValue::new,
                AirChange::new,
                Elevation::new,
                Area::new,
                WireGauge::new);
    }

    @ParameterizedTest
    @MethodSource("makers")
    @SuppressWarnings("unchecked")
    void theGreaterNumberIsTheGreaterQuantity(DoubleFunction<? extends Quantity> make) {
        if (make.apply(2) instanceof Comparable<?>) {
            Comparable<Object> two = (Comparable<Object>) make.apply(2);
            assertThat(two.compareTo(make.apply(3))).isNegative();
            assertThat(two.compareTo(make.apply(1))).isPositive();
            assertThat(two.compareTo(make.apply(2))).isZero();
        } else {
            assertThat(make.apply(2)).isInstanceOfAny(WireGauge.class, Elevation.class);
        }
    }

    /** American wire gauge (ASTM B258): AWG 6 is 0.162 in. thick, AWG 8 0.1285 in. */
    @Test
    void aSmallerGaugeIsAThickerWire() {
        assertThat(new WireGauge(6).atLeastAsThickAs(new WireGauge(8))).isTrue();
        assertThat(new WireGauge(6).atLeastAsThickAs(new WireGauge(6))).isTrue();
        assertThat(new WireGauge(8).atLeastAsThickAs(new WireGauge(6))).isFalse();
    }

    /** NIST Handbook 44, appendix C: a gallon is 231 cubic inches; a bath of 8 ft3 holds 59.84 gal. */
    @Test
    void timesFlowsAndVolumesInTheUnitsPeopleSpeakOf() {
        assertThat(Measure.TIME.read("1.5 d")).isEqualTo(Measure.TIME.read("36 h"));
        assertThat(Volume.ofCubicFeet(8).gallons()).isCloseTo(59.844, within(1e-3));
        assertThat(new Volume(59.844).cubicFeet()).isCloseTo(8, within(1e-4));
        assertThat(Length.ofFeet(12.5).inches()).isEqualTo(150);
        assertThat(Measure.RATIO.read("30 %").percent()).isCloseTo(30, within(1e-12));
        assertThat(Elevation.ofFeet(5280)).isEqualTo(Measure.ELEVATION.read("5,280 ft"));
        assertThat(HeatRate.ofBtuh(65_000).plus(HeatRate.ofBtuh(199_000))).isEqualTo(HeatRate.ofBtuh(264_000));
        assertThat(HeatRate.ofBtuh(500_000).minus(HeatRate.ofBtuh(320_000))).isEqualTo(HeatRate.ofBtuh(180_000));
        assertThat(Bore.ofInches(0.824).canonical()).isEqualTo(0.824);
        assertThat(Bore.ofInches(0.824)).isLessThan(Bore.ofInches(1.049));
    }

    @ParameterizedTest
    @MethodSource("makers")
    void noQuantityIsEverNotANumber(DoubleFunction<? extends Quantity> make) {
        assertThatThrownBy(() -> make.apply(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> make.apply(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThat(make.apply(-0.0).canonical()).isEqualTo(0.0);
        assertThat(Double.doubleToRawLongBits(make.apply(-0.0).canonical())).isZero();
        assertThat(make.apply(2)).isEqualTo(make.apply(2)).isNotEqualTo(make.apply(3));
    }

    @Test
    void whatIsNoQuantityIsNamedWithItsArticle() {
        assertThatThrownBy(() -> Measure.AIR_CHANGE.read("fast")).hasMessageContaining("is not an air change");
        assertThatThrownBy(() -> Measure.LENGTH.read("long")).hasMessageContaining("is not a length");
    }
}
