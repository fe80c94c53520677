package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * The plan that documents the format, with the figures printed there. Tables: 2018 IRC Table G2413.4(16) for the tubing
 * (rows 30), the code's equation at 10 psi for the buried line.
 */
class SamplePlanTest {

    private final Plan plan = Samples.sample();
    private final Sizing sizing = Sizing.of(Piping.of(plan), CapacityTables.standard());

    @Test
    void everyStageTakesItsOwnLongestRun() {
        assertThat(sizing.stage(0).longestRun()).contains(Length.ofFeet(50));
        assertThat(sizing.stage(0).longestRunTo().orElseThrow().id()).isEqualTo("R2");
        assertThat(sizing.stage(1).longestRun()).contains(Length.ofFeet(30));
        assertThat(sizing.stage(1).longestRunTo().orElseThrow().id()).isEqualTo("range");
    }

    @Test
    void everySectionIsSizedAsPrinted() {
        section(0, 245_000, 50, "1/2", "1/2", 1_630_000, "sized");
        section(1, 245_000, 30, "30", "30", 297_000, "sized");
        section(2, 180_000, 30, "30", "30", 297_000, "sized");
        section(3, 65_000, 30, "19", "18", 87_000, "adequate");
        assertThat(sizing.section(0).table().orElseThrow().id()).isEqualTo("pe-pipe-10psi-1psi-computed");
        assertThat(sizing.section(0).confidence().orElseThrow().written()).isEqualTo("computed");
    }

    private void section(int i, double load, double row, String size, String needed, double capacity, String status) {
        SectionSize s = sizing.section(i);
        assertThat(s.load()).contains(HeatRate.ofBtuh(load));
        assertThat(s.rowRun()).contains(Length.ofFeet(row));
        assertThat(s.size()).contains(size);
        assertThat(s.neededSize()).contains(needed);
        assertThat(s.capacity()).contains(HeatRate.ofBtuh(capacity));
        assertThat(s.status().written()).isEqualTo(status);
    }
}
