package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import longrun.plan.PlannedHouse;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * What more a house bears, in words. Capacities by 2018 IFGC Table 402.4(28), steel on 11 in. w.c. with 0.5 in. drop: 3/4
 * carries 287,000 at 40 ft, 212,000 at 70 ft, 197,000 at 80 ft, 1/2 carries 137,000 at 40 ft.
 */
class HeadroomWordsTest {

    private static PlannedHouse house() {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.").with("'fittingAllowance':'none'");
    }

    private static PlannedHouse inARow(String... ofB) {
        return house().section("A", "R", "steel", "20 ft")
                .section("B", "A", "steel", "20 ft", ofB)
                .appliance("heater", "B", "200000 Btu/h");
    }

    private static Headroom headroom(PlannedHouse house) {
        return Headroom.of(house.size());
    }

    @Test
    void theSectionNearerTheTankIsNamedWhereTwoGrowTogether() {
        Headroom h = headroom(inARow());
        assertThat(h.outletWords(0))
                .isEqualTo("heater: 87,000 Btu/h more: nothing changes; 87,001 Btu/h: section A grows");
        assertThat(h.growsFirst(0)).contains("A");
        assertThat(h.stageWords(0))
                .isEqualTo(
                        "30 ft farther: nothing changes; 30.01 ft: section A grows from 3/4 in., section B grows from"
                                + " 3/4 in.");
    }

    @Test
    void aSectionTooSmallAlreadyLeavesNoRoomAndIsNamed() {
        Headroom h = headroom(inARow("'installedSize':'1/2'"));
        assertThat(h.atAppliance(0)).contains(HeatRate.ZERO);
        assertThat(h.outletWords(0)).isEqualTo("heater: no room, section B carries no more");
        assertThat(h.growsFirst(0)).contains("B");
        assertThat(h.lengthOfStage(0)).contains(Length.ZERO);
        assertThat(h.stageWords(0)).isEqualTo("no room: a section has no size or too small a one");
    }

    @Test
    void aFactMissingOnTheWayIsUnknownEvenBeforeASectionTooSmall() {
        PlannedHouse small = inARow("'installedSize':'1/2'");
        for (Headroom h : java.util.List.of(
                headroom(inARow().without("/sections/0/material")),
                headroom(small.without("/sections/0/material")),
                headroom(inARow().without("/appliances/0/input")))) {
            assertThat(h.atAppliance(0)).isEmpty();
            assertThat(h.ofStage(0)).isEmpty();
            assertThat(h.outletWords(0)).isEqualTo("heater: not known, an entry on the way is missing");
            assertThat(h.stageWords(0)).isEqualTo("not known, an entry of the stage is missing");
        }
    }

    @Test
    void anApplianceThatHangsOnNothingHasNoHeadroom() {
        Headroom h = headroom(house().appliance("heater", "B", "200000 Btu/h").lastWithout("appliances", "fedBy"));
        assertThat(h.atAppliance(0)).isEmpty();
        assertThat(h.growsFirst(0)).isEmpty();
    }

    @Test
    void aSectionThatNothingMakesGrowEndsWithItsTable() {
        // 1/2 in. carries more than 1,000 Btu/h down to the table's last row, 2,000 ft
        Headroom h = headroom(house().section("A", "R", "steel", "40 ft").appliance("light", "A", "1000 Btu/h"));
        assertThat(h.stageWords(0))
                .isEqualTo("1960 ft farther: nothing changes; 1960.01 ft: section A has no longer row in its table");
    }

    /** A trunk A of 280,000: it bears 7,000 more, and 287,000 / 0.7 - 280,000 = 130,000 where a share may be taken. */
    @Test
    void aShareForDiversityGivesRoomOnlyWithItsReason() {
        assertThat(ofHeater("")).contains(HeatRate.ofBtuh(7_000));
        assertThat(ofHeater("'diversity':{'share':'70 %'}")).contains(HeatRate.ofBtuh(7_000));
        assertThat(ofHeater("'diversity':{'share':'70 %','reason':' '}")).contains(HeatRate.ofBtuh(7_000));
        // the heater alone must still fit through its own pipe: 287,000 - 200,000
        assertThat(ofHeater("'diversity':{'share':'70 %','reason':'never all at once'}"))
                .contains(HeatRate.ofBtuh(87_000));
    }

    private static Optional<HeatRate> ofHeater(String diversity) {
        PlannedHouse house = house().section("A", "R", "steel", "35 ft")
                .section("B", "A", "steel", "5 ft")
                .section("C", "A", "steel", "5 ft")
                .appliance("heater", "B", "200000 Btu/h")
                .appliance("dryer", "C", "80000 Btu/h");
        return headroom(diversity.isEmpty() ? house : house.with(diversity)).atAppliance(0);
    }

    @Test
    void theFirstSectionOfAPlanHasHeadroomLikeAnyOther() {
        Headroom h = headroom(house().section("A", "R", "steel", "40 ft").appliance("heater", "A", "200000 Btu/h"));
        assertThat(h.atAppliance(0)).contains(HeatRate.ofBtuh(87_000));
        assertThat(h.growsFirst(0)).contains("A");
    }

    /** 2018 IFGC Table 402.4(28): 3/4 carries 200,000 down to the row of 70 ft; lengths are compared to 0.001 ft. */
    @Test
    void theFeetAreExactAlsoBetweenTwoThousandthsOfAFoot() {
        for (int i = 400_005; i < 700_000; i += 4_010) {
            String leg = String.format(java.util.Locale.ROOT, "%.4f", i / 10_000.0);
            Headroom h =
                    headroom(house().section("A", "R", "steel", leg + " ft").appliance("heater", "A", "200000 Btu/h"));
            double more = h.lengthOfStage(0).orElseThrow().feet();
            double run = i / 10_000.0;
            assertThat(Length.ofFeet(run + more).rounded().feet()).as(leg).isLessThanOrEqualTo(70);
            assertThat(Length.ofFeet(run + more + 0.01).rounded().feet())
                    .as(leg)
                    .isGreaterThan(70);
        }
    }

    /** 25.5 kW and the like are no whole Btu/h: what a table's cell leaves beside them is one all the same. */
    @Test
    void roomIsWholeBtuhAlsoWhereALoadIsABreathOverOne() {
        assertThat(LoadRoom.wholeUpTo(287_000, 87_000)).isEqualTo(200_000);
        assertThat(LoadRoom.wholeUpTo(287_000, 87_000.0000001)).isEqualTo(200_000);
        assertThat(LoadRoom.wholeUpTo(287_000, 87_000.5)).isEqualTo(199_999);
        assertThat(LoadRoom.wholeUpTo(287_000, 287_001)).isEqualTo(-1);
    }
}
