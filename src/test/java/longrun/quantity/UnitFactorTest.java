package longrun.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import javax.measure.UnitConverter;
import javax.measure.quantity.Power;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * Every unit factor against a literal of NIST Special Publication 811 (2008), appendix B.8, or NIST Handbook 44,
 * appendix C, and against the reference implementation of JSR 385 (Indriya with its US customary units).
 */
class UnitFactorTest {

    private static double in(Measure<?> measure, String unit) {
        return measure.units().stream()
                .filter(u -> u.name().equals(unit))
                .findFirst()
                .orElseThrow()
                .toCanonical(1);
    }

    @TestFactory
    List<DynamicTest> literals() {
        return List.of(
                // NIST SP 811 B.8: foot 0.3048 m, inch 0.0254 m, both exact
                literal("ft in metres", Measure.LENGTH, "ft", 0.3048 / 0.3048),
                literal("in", Measure.LENGTH, "in", 0.0254 / 0.3048),
                literal("m", Measure.LENGTH, "m", 3.280839895013123),
                literal("cm", Measure.LENGTH, "cm", 0.03280839895013123),
                literal("mm", Measure.LENGTH, "mm", 0.003280839895013123),
                // NIST SP 811 B.8: psi 6.894757 kPa
                literal("kPa", Measure.PRESSURE, "kPa", 1 / 6.894757),
                literal("mbar", Measure.PRESSURE, "mbar", 0.1 / 6.894757),
                literal("bar", Measure.PRESSURE, "bar", 100 / 6.894757),
                // 2018 IFGC 402.4: 27.7 in. w.c. = 1 psi
                literal("in w.c.", Measure.PRESSURE, "in w.c.", 1 / 27.7),
                // NIST SP 811 B.8: Btu(IT) per hour 0.2930711 W
                literal("kW", Measure.HEAT_RATE, "kW", 1000 / 0.2930711),
                literal("MJ/h", Measure.HEAT_RATE, "MJ/h", 1e6 / 1055.056),
                literal("kBtu/h", Measure.HEAT_RATE, "kBtu/h", 1000),
                // NIST Handbook 44 appendix C: gallon 231 in3, 3.785411784 L; cubic foot 1728 in3
                literal("L", Measure.VOLUME, "L", 1 / 3.785411784),
                literal("ft3", Measure.VOLUME, "ft3", 7.480519480519481),
                literal("L/min", Measure.FLOW, "L/min", 1 / 3.785411784),
                literal("gal/h", Measure.FLOW, "gal/h", 1.0 / 60),
                literal("ft3/h", Measure.FLOW, "ft3/h", 7.480519480519481 / 60),
                // NIST SP 811 B.8: pound 0.45359237 kg exactly
                literal("kg", Measure.MASS, "kg", 2.2046226218487757),
                literal("%", Measure.RATIO, "%", 0.01),
                // NIST SP 811 B.8: Btu(IT)/(h.degF) 0.5275279 W/K
                literal("W/K", Measure.HEAT_LOSS, "W/K", 1 / 0.5275279),
                literal("h", Measure.TIME, "h", 60),
                literal("d", Measure.TIME, "d", 1440));
    }

    private static DynamicTest literal(String name, Measure<?> measure, String unit, double expected) {
        return DynamicTest.dynamicTest(
                name, () -> assertThat(in(measure, unit)).isCloseTo(expected, within(expected * 2e-7)));
    }

    @Test
    void everyUnitIsCheckedAgainstALiteral() {
        // canonical units are 1 by definition; temperatures have their own test; single-unit measures have no factor
        Map<Measure<?>, Integer> checked = Map.of(
                Measure.LENGTH,
                5,
                Measure.PRESSURE,
                5,
                Measure.HEAT_RATE,
                4,
                Measure.VOLUME,
                3,
                Measure.FLOW,
                4,
                Measure.MASS,
                2,
                Measure.HEAT_LOSS,
                2,
                Measure.TIME,
                3);
        checked.forEach((m, count) -> assertThat(m.units()).as(m.name()).hasSize(count));
    }

    @Test
    void indriyaAgrees() {
        UnitConverter feet = USCustomary.FOOT.getConverterTo(Units.METRE);
        assertThat(Length.ofFeet(60).metres()).isCloseTo(feet.convert(60.0), within(1e-9));
        UnitConverter gallons = USCustomary.GALLON_LIQUID.getConverterTo(Units.LITRE);
        assertThat(500 / in(Measure.VOLUME, "L")).isCloseTo(gallons.convert(500.0), within(1e-9));
        UnitConverter pounds = USCustomary.POUND.getConverterTo(Units.KILOGRAM);
        assertThat(420 / in(Measure.MASS, "kg")).isCloseTo(pounds.convert(420.0), within(1e-9));
        UnitConverter fahrenheit = USCustomary.FAHRENHEIT.getConverterTo(Units.CELSIUS);
        assertThat(fahrenheit.convert(Measure.TEMPERATURE.read("100 degC").degF()))
                .isCloseTo(100, within(1e-9));
        assertThat(fahrenheit.convert(Measure.TEMPERATURE.read("-40 degC").degF()))
                .isCloseTo(-40, within(1e-9));
        javax.measure.Unit<Power> btuh = new TransformedUnit<>(
                "Btu/h", Units.WATT, MultiplyConverter.ofRational(105_505_585_262L, 360_000_000_000L));
        assertThat(HeatRate.ofBtuh(199_000).kilowatts() * 1000)
                .isCloseTo(btuh.getConverterTo(Units.WATT).convert(199_000.0), within(1e-6));
        assertThat(in(Measure.LENGTH, "in"))
                .isCloseTo(USCustomary.INCH.getConverterTo(USCustomary.FOOT).convert(1.0), within(1e-12));
    }

    @Test
    void temperatureScalesMeetWhereTheyShould() {
        // NIST SP 811 B.8: t(degC) = (t(degF) - 32) / 1.8
        assertThat(Measure.TEMPERATURE.read("0 degC").degF()).isCloseTo(32, within(1e-12));
        assertThat(Measure.TEMPERATURE.read("100 C").degF()).isCloseTo(212, within(1e-12));
    }

    @Test
    void theCodesInchOfWaterIsWithinATenthOfAPercentOfTheConventionalOne() {
        // NIST SP 811 B.8: inch of water (conventional) 249.0889 Pa
        double conventional = 249.0889 / 6894.757;
        assertThat(in(Measure.PRESSURE, "in w.c.")).isCloseTo(conventional, within(conventional * 0.001));
    }

    @Test
    void eighteenPointTwoEightEightMetresIsSixtyFeet() {
        assertThat(Measure.LENGTH.read("18.288 m").rounded()).isEqualTo(Length.ofFeet(60));
    }
}
