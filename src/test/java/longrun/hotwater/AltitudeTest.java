package longrun.hotwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.Samples;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.plan.Appliance;
import longrun.plan.PlannedHouse;
import longrun.quantity.Elevation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 4 % less for each 1,000 ft (NFPA 54 11.1.2), and what is said of it. */
class AltitudeTest {

    private static PlannedHouse house(String elevation, String... entries) {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("'site':{'elevation':'" + elevation + "'}")
                .section("A", "R", "steel", "20 ft")
                .appliance("f", "A", "60000 Btu/h", entries);
    }

    private static Finding finding(PlannedHouse house) {
        assertThat(Altitude.findings(house.plan())).hasSize(1);
        return Altitude.findings(house.plan()).get(0);
    }

    /** NFPA 54 11.1.2, counted from the sea and, as others read it, from 2,000 ft up. */
    @ParameterizedTest
    @CsvSource({
        "1999, 1, 1, 1",
        "2000, 1, 1, 1",
        "2001, 0.91996, 0.99996, 0.91996",
        "3000, 0.88, 0.96, 0.88",
        "10000, 0.6, 0.68, 0.6",
        "26000, 0, 0.04, 0"
    })
    void theLowerOfTwoReadingsIsTheSafer(double feet, double fromSea, double aboveFree, double share) {
        Elevation height = Elevation.ofFeet(feet);
        assertThat(Altitude.shareFromSea(height)).isCloseTo(fromSea, within(1e-12));
        assertThat(Altitude.shareAboveFree(height)).isCloseTo(aboveFree, within(1e-12));
        assertThat(Altitude.share(height)).isCloseTo(share, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"4999 ft, false", "5000 ft, true", "5001 ft, true", "1524 m, true"})
    void aLabelThatReachesTheHouseCoversIt(String label, boolean covers) {
        PlannedHouse house = house("5000 ft", "'altitudeLabel':'" + label + "'");
        Appliance appliance = house.plan().appliances().get(0);
        assertThat(Altitude.isCovered(appliance, Elevation.ofFeet(5000))).isEqualTo(covers);
        assertThat(Altitude.findings(house.plan())).hasSize(covers ? 0 : 1);
    }

    @Test
    void anApplianceWithoutAnAltitudeLabelIsNotCovered() {
        assertThat(Altitude.isCovered(house("5000 ft").plan().appliances().get(0), Elevation.ofFeet(5000)))
                .isFalse();
        assertThat(Altitude.isCovered(
                        house("5000 ft", "'altitudeLabel':'none'")
                                .plan()
                                .appliances()
                                .get(0),
                        Elevation.ofFeet(5000)))
                .isFalse();
    }

    @Test
    void whatIsLostIsToldInBothReadingsAndTheLabelIsAskedFor() {
        Finding f = finding(house("5000 ft"));
        assertThat(f.found())
                .isEqualTo(
                        "The house stands at 5,000 ft: of its input of 60,000 Btu/h 48,000 Btu/h counted from the sea,"
                                + " 52,800 Btu/h counted from 2,000 ft");
        assertThat(f.required())
                .isEqualTo("output taken as 80 % of the input, the lower of two readings, unless the label covers"
                        + " 5,000 ft");
        assertThat(f.ask().orElseThrow()).contains("Up to which altitude").contains("5,000 ft");
        assertThat(f.askWhom()).contains(AskWhom.RATING_PLATE);
        assertThat(f.field()).isEqualTo("/appliances/0/altitudeLabel");
        assertThat(f.remedy()).contains("kit that covers it");
    }

    @Test
    void whatTheLabelSaysIsToldAsItWasTyped() {
        assertThat(finding(house("5000 ft", "'altitudeLabel':'4500 ft'")).found())
                .endsWith("; its label covers 4500 ft");
        assertThat(finding(house("5000 ft", "'altitudeLabel':'none'")).found())
                .endsWith("; its label names no altitude");
    }

    @Test
    void anInputNotEnteredIsSaidToBeNone() {
        PlannedHouse house = house("5000 ft").lastWithout("appliances", "input");
        assertThat(finding(house).found()).isEqualTo("The house stands at 5,000 ft; its input is not entered");
    }

    @Test
    void theElevationIsAskedForOnlyWhereSomethingBurns() {
        assertThat(Altitude.findings(Samples.plan("{\"format\":\"longrun-plan/1\"}")))
                .isEmpty();
        Finding asks =
                finding(PlannedHouse.empty().appliance("f", "A", "60000 Btu/h").lastWithout("appliances", "fedBy"));
        assertThat(asks.ask().orElseThrow()).startsWith("How high above the sea");
        assertThat(asks.askWhom()).contains(AskWhom.OWNER);
    }
}
