package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.plan.choice.ApplianceKind;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import org.junit.jupiter.api.Test;

/** An appliance as people write it in one line; the words are common practice. */
class ApplianceLineTest {

    private static void reads(String typed, ApplianceKind kind, double btuh) {
        ApplianceLine line = ApplianceLine.read(typed);
        assertThat(line.kind()).as(typed).isEqualTo(kind);
        assertThat(Measure.HEAT_RATE.read(line.input()).btuh()).as(typed).isEqualTo(btuh);
    }

    @Test
    void kindAndInputStandInOneLine() {
        reads("furnace 80k", ApplianceKind.FURNACE, 80_000);
        reads("Range 65,000 Btu/h", ApplianceKind.RANGE, 65_000);
        assertThat(ApplianceLine.read("Range 65,000 Btu/h").input())
                .as("its unit stays as it is written")
                .endsWith(" Btu/h");
        reads("tankless 199000", ApplianceKind.ON_DEMAND_WATER_HEATER, 199_000);
        reads("199k on-demand water heater", ApplianceKind.ON_DEMAND_WATER_HEATER, 199_000);
        reads("clothes dryer 22k", ApplianceKind.CLOTHES_DRYER, 22_000);
        reads("storage water heater 40k", ApplianceKind.STORAGE_WATER_HEATER, 40_000);
    }

    @Test
    void withoutAnInputTheInputStaysUnknown() {
        assertThat(ApplianceLine.read("fireplace")).isEqualTo(new ApplianceLine(ApplianceKind.FIREPLACE, ""));
    }

    @Test
    void aHeaterThatCouldBeTwoThingsIsAskedFor() {
        assertThatThrownBy(() -> ApplianceLine.read("water heater 40k"))
                .isInstanceOfSatisfying(
                        NotAQuantity.class, e -> assertThat(e.advice()).contains("which heater"));
        assertThatThrownBy(() -> ApplianceLine.read("toaster 3k"))
                .isInstanceOfSatisfying(
                        NotAQuantity.class, e -> assertThat(e.advice()).contains("no appliance known here"));
        assertThatThrownBy(() -> ApplianceLine.read("80k")).isInstanceOf(NotAQuantity.class);
        assertThatThrownBy(() -> ApplianceLine.read("furnace much")).isInstanceOf(NotAQuantity.class);
    }
}
