package longrun.pressure;

import static longrun.pressure.ChainByHandTest.pressures;
import static org.assertj.core.api.Assertions.assertThat;

import longrun.plan.PlannedHouse;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pressure for pipes and regulators, not for a burner: 1 psi and more (common practice). */
class LinePressureTest {

    private static Pressures house(String kind, String outlet, String appliance) {
        PlannedHouse house = PlannedHouse.empty()
                .regulator("R", kind, "tank", outlet.isEmpty() ? "1 psi" : outlet, "0.3 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .appliance("burner", "A", "100000 Btu/h", appliance);
        return pressures(
                outlet.isEmpty() ? house.without("/regulators/0/outlet").text() : house.text());
    }

    @Test
    void onePoundIsLinePressureAndAHundredthLessIsNot() {
        assertThat(LinePressure.isLine(Pressure.ofPsi(1))).isTrue();
        assertThat(LinePressure.isLine(Pressure.ofPsi(0.99))).isFalse();
        assertThat(LinePressure.isLine(Pressure.ofInWc(14))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "first-stage, 10 psi, true",
        "second-stage, 1 psi, true",
        "second-stage, 11 in w.c., false",
        "first-stage, '', true",
        "two-psi, '', true",
        "second-stage, '', ",
        "line, '', ",
    })
    void withoutASettingTheKindDecidesAndElseItIsNotKnown(String kind, String outlet, Boolean stands) {
        Pressures p = house(kind, outlet, "'kind':'boiler'");
        assertThat(LinePressure.stands(p, p.outlet(0)).orElse(null)).isEqualTo(stands);
    }

    @Test
    void whatHangsOnNothingStandsUnderNoKnownPressure() {
        Pressures p = pressures(PlannedHouse.empty()
                .appliance("burner", "A", "100000 Btu/h")
                .lastWithout("appliances", "fedBy")
                .text());
        assertThat(LinePressure.stands(p, p.outlet(0))).isEmpty();
    }

    /** Lock-up at 120 % of 10 psi (default) is 12 psi. */
    @ParameterizedTest
    @CsvSource({"other, 12 psi, true", "other, 11.9 psi, false", "boiler, 12 psi, false", "other, , false"})
    void aLabelBearsLinePressureUpToLockUpAndOnlyWhereItIsBelieved(String kind, String label, boolean rated) {
        String entries = "'kind':'" + kind + "'" + (label == null ? "" : ",'maxInlet':'" + label + "'");
        Pressures p = house("first-stage", "10 psi", entries);
        assertThat(LinePressure.isRatedFor(
                        p.sizing().piping().plan().appliances().get(0), p.outlet(0)))
                .isEqualTo(rated);
    }

    @Test
    void withoutASettingNoLabelIsSaidToBearIt() {
        Pressures p = house("first-stage", "", "'kind':'other','maxInlet':'15 psi'");
        assertThat(LinePressure.isRatedFor(
                        p.sizing().piping().plan().appliances().get(0), p.outlet(0)))
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({"boiler, 1 psi, true", "boiler, 1.01 psi, false", "other, 15 psi, true", "boiler, , false"})
    void aHouseholdLabelIsBelievedUpToOnePound(String kind, String label, boolean believed) {
        String entries = "'kind':'" + kind + "'" + (label == null ? "" : ",'maxInlet':'" + label + "'");
        Pressures p = house("second-stage", "11 in w.c.", entries);
        assertThat(LinePressure.isBelieved(
                        p.sizing().piping().plan().appliances().get(0)))
                .isEqualTo(believed);
    }
}
