package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.quantity.HeatRate;
import org.junit.jupiter.api.Test;

class DisplayUnitsTest {

    /** 1 kWh = 3,412.142 Btu (Btu by the international table): NIST SP 811 (2008), Appendix B.8. */
    @Test
    void anElementOfFourAndAHalfKilowattsIsToldInWholeBtuAnHour() {
        HeatRate element = HeatRate.ofBtuh(4.5 * 3_412.142);
        assertThat(DisplayUnits.HEAT.words(UnitSystem.CUSTOMARY, element)).isEqualTo("15,355 Btu/h");
        assertThat(DisplayUnits.HEAT.words(UnitSystem.METRIC, element)).isEqualTo("4.5 kW");
        assertThat(DisplayUnits.HEAT.words(UnitSystem.CUSTOMARY, HeatRate.ofBtuh(850.5)))
                .isEqualTo("850.5 Btu/h");
    }
}
