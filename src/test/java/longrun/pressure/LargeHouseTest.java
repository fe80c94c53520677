package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;

/**
 * Ten thousand sections in a row, an appliance at the end of each second one, all proved. Each foot of trunk is reckoned
 * apart with the code's flow formula (2018 IFGC 402.4).
 */
class LargeHouseTest {

    private static final int TRUNKS = 5_000;
    private static final double INPUT = 10;

    @Test
    void tenThousandSectionsAreProved() {
        Pressures p = ChainByHandTest.pressures(house().text());
        assertThat(p.sizing().piping().sectionCount()).isEqualTo(10_000);
        assertThat(p.outlets())
                .hasSize(TRUNKS)
                .allSatisfy(o -> assertThat(o.status()).isEqualTo(InletStatus.ENOUGH));
        // bore of the size in use, 0.01 ft a section: h = 1.2462 x ft x (Btu/h / 2,488 / (2,313 x D^2.623))^(1/0.541)
        double at = 11;
        for (int t = 0; t < TRUNKS; t++) {
            at -= lost(p, 2 * t, (TRUNKS - t) * INPUT);
            double branch = lost(p, 2 * t + 1, INPUT);
            assertThat(p.outlet(t).pressure().orElseThrow().inWc()).as("A" + t).isCloseTo(at - branch, within(1e-9));
        }
        SectionOrigins sections = new SectionOrigins(p);
        PressureOrigins outlets = new PressureOrigins(p);
        assertThat(sections.drop(9_998).value()).endsWith("in. w.c.");
        assertThat(outlets.pressure(TRUNKS - 1).inputs()).hasSize(2);
    }

    private static double lost(Pressures p, int section, double btuh) {
        double bore = p.sizing().section(section).bore().orElseThrow().inches();
        return 1.2462 * 0.01 * Math.pow(btuh / 2488 / (2313 * Math.pow(bore, 2.623)), 1 / 0.541);
    }

    private static PlannedHouse house() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.").with("'fittingAllowance':'none'");
        for (int i = 0; i < TRUNKS; i++) {
            house.section("T" + i, i == 0 ? "R" : "T" + (i - 1), "steel", "0.01 ft")
                    .section("B" + i, "T" + i, "steel", "0.01 ft")
                    .appliance(
                            "A" + i,
                            "B" + i,
                            "10 Btu/h",
                            "'kind':'other','minInlet':'8 in w.c.','maxInlet':'14 in w.c.'");
        }
        return house;
    }
}
