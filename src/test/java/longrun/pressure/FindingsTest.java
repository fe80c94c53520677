package longrun.pressure;

import static longrun.pressure.ChainByHandTest.HOUSE;
import static longrun.pressure.ChainByHandTest.pressures;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.piping.Piping;
import longrun.plan.PlannedHouse;
import longrun.rules.Rules;
import longrun.rules.shape.House;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Pressure findings: 2015 IRC Appendix A.1; footnote of 2018 IRC Table G2413.4(17). */
class FindingsTest {

    private static final String RIGHT = HOUSE.replace("\"lockUp\"", "\"lossAtLoad\":\"0.5 psi\",\"lockUp\"")
            .replace("\"capacity\":\"400000 Btu/h\"", "\"capacity\":\"400000 Btu/h\",\"capacityAtInlet\":\"1.5 psi\"")
            .replace("\"capacity\":\"500000 Btu/h\"", "\"capacity\":\"500000 Btu/h\",\"capacityAtInlet\":\"5 psi\"");

    @Test
    void aRightHouseHasNoFinding() {
        assertThat(PressureFindings.of(pressures(RIGHT))).isEmpty();
    }

    @Test
    void aLowInletTellsWhatTakesThePressureAndTheSettingWindow() {
        Finding f = only(InletPressureLow.of(pressures(RIGHT.replace("9.5 in w.c.", "10 in w.c."))));
        assertThat(f.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(f.at()).isEqualTo("heater");
        assertThat(f.field()).isEqualTo("/regulators/2/outlet");
        assertThat(f.found())
                .isEqualTo(
                        "9.91 in. w.c. arrives at the boiler with everything firing: L set to 11 in. w.c., pipe loses"
                                + " 0.26 in. w.c., regulator falls 0.5 in. w.c., connector loses 0.33 in. w.c.");
        assertThat(f.required())
                .isEqualTo("at least 10 in. w.c. at the inlet, the label's least; L set to no less than 11.09 in. w.c."
                        + " and no more than 11.3 in. w.c.");
        assertThat(f.confidence()).isEqualTo(Confidence.PRINT);
    }

    @Test
    void aLabelThatNoSettingSuitsIsNamedOnce() {
        Finding f = only(InletPressureLow.of(pressures(RIGHT.replace("9.5 in w.c.", "11 in w.c."))));
        assertThat(f.remedy())
                .startsWith(
                        "No setting of L suits the boiler, which needs no less than 12.09 in. w.c. and no more than 11.3"
                                + " in. w.c. at once.");
    }

    @Test
    void aLowInletThatRestsOnDefaultsIsHeldFromMemory() {
        Finding f = only(InletPressureLow.of(pressures(
                RIGHT.replace("\"droopAtCapacity\":\"1 in w.c.\",", "").replace("9.5 in w.c.", "10 in w.c."))));
        assertThat(f.confidence()).isEqualTo(Confidence.MEMORY);
        assertThat(f.found()).contains("regulator falls 1 in. w.c. (default, its own figure is not entered)");
        assertThat(f.ask()).isPresent();
    }

    @Test
    void aLabelNotEnteredIsAQuestionAndNeverAWarning() {
        List<Finding> found = PressureFindings.of(
                pressures(RIGHT.replace("\"minInlet\":\"9.5 in w.c.\",\"maxInlet\":\"13 in w.c.\",", "")));
        assertThat(found).hasSize(2).allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
        assertThat(found)
                .extracting(Finding::field)
                .containsExactly("/appliances/0/minInlet", "/appliances/0/maxInlet");
    }

    @Test
    void theGreatestInletIsHeldAgainstLockUp() {
        assertThat(InletPressureHigh.of(pressures(RIGHT.replace("13 in w.c.", "12.65 in w.c."))))
                .isEmpty();
        Finding f = only(InletPressureHigh.of(pressures(RIGHT.replace("13 in w.c.", "12.64 in w.c."))));
        assertThat(f.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(f.found())
                .isEqualTo(
                        "12.65 in. w.c. stands at the boiler with nothing firing: L set to 11 in. w.c., lock-up at 115"
                                + " %");
        assertThat(f.required()).contains("no more than 12.64 in. w.c.");
    }

    /** Line pressure at a burner is told by the rule of its own name: a regulator is lacking, whatever the label says. */
    @Test
    void linePressureAtABurnerIsNoQuestionOfItsLabel() {
        String onTenPsi = """
            {"format":"longrun-plan/1",
             "regulators":[{"id":"R1","kind":"first-stage","fedBy":"tank","outlet":"10 psi","allowedDrop":"1 psi"}],
             "sections":[{"id":"A","from":"R1","material":"steel","length":"20 ft"}],
             "appliances":[{"id":"dryer","kind":"clothes-dryer","input":"22000 Btu/h","fedBy":"A","minInlet":"8 in w.c."}]}
            """;
        for (String label :
                List.of("", ",\"maxInlet\":\"none\"", ",\"maxInlet\":\"14 in w.c.\"", ",\"maxInlet\":\"14 psi\"")) {
            Pressures p = pressures(onTenPsi.replace("\"8 in w.c.\"", "\"8 in w.c.\"" + label));
            assertThat(InletPressureHigh.of(p)).as(label).isEmpty();
            Finding told = only(Rules.check(House.of(p)).findings().stream()
                    .filter(f -> f.rule().equals("appliance-line-pressure"))
                    .toList());
            assertThat(told.severity()).as(label).isEqualTo(Severity.MUST_FIX);
            assertThat(told.confidence()).isEqualTo(Confidence.MEMORY);
            assertThat(told.remedy()).contains("second-stage").doesNotContain(" set ");
        }
    }

    @Test
    void aGreatestInletOverOnePsiIsReadAgainOnAHouseholdAppliance() {
        Pressures p = pressures(RIGHT.replace("\"maxInlet\":\"13 in w.c.\"", "\"maxInlet\":\"13 psi\""));
        assertThat(InletPressureHigh.of(p))
                .filteredOn(f -> f.field().equals("/appliances/0/maxInlet"))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).contains("13 psi"));
        assertThat(p.outlet(0).status()).isEqualTo(InletStatus.UNKNOWN);
    }

    @Test
    void aLineRegulatorMayLoseHalfAPsi() {
        assertThat(LineRegulatorLoss.of(pressures(RIGHT))).isEmpty();
        Finding over = only(LineRegulatorLoss.of(pressures(RIGHT.replace("\"0.5 psi\"", "\"0.51 psi\""))));
        assertThat(over.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(over.found()).isEqualTo("Line regulator L loses 0.51 psi at its load");
        assertThat(over.remedy()).startsWith("Use a larger line regulator");
        Finding unknown = only(LineRegulatorLoss.of(pressures(RIGHT.replace("\"lossAtLoad\":\"0.5 psi\",", ""))));
        assertThat(unknown.severity()).isEqualTo(Severity.CAUTION);
        assertThat(unknown.ask()).isPresent();
        assertThat(unknown.remedy()).isEqualTo("Enter its loss at its load.");
        assertThat(unknown.field()).isEqualTo("/regulators/2/lossAtLoad");
    }

    @Test
    void theSampleAsksAndWarnsOfNothing() {
        Pressures p = Pressures.of(Sizing.of(Piping.of(Samples.sample()), CapacityTables.standard()));
        assertThat(PressureFindings.of(p))
                .allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
    }

    @Test
    void noFindingHedges() {
        for (long seed = 1; seed <= 60; seed++) {
            Pressures p = pressures(new RandomHouses(seed, true, SecondWayTest.allowance(seed)).json);
            assertThat(PressureFindings.of(p)).allSatisfy(FindingsTest::plain);
        }
    }

    private static void plain(Finding f) {
        String text = f.found() + " " + f.required() + " " + f.remedy();
        assertThat(text)
                .doesNotContainPattern("\\b(may|might|invalid|should)\\b")
                .doesNotContain("NaN")
                .doesNotContain("Optional");
        assertThat(f.field()).startsWith("/");
        assertThat(f.required()).isNotBlank();
    }

    private static Finding only(List<Finding> found) {
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void aLossIsAskedOnlyOfALineRegulatorOnTwoPsi() {
        String house = RIGHT.replace("\"lossAtLoad\":\"0.5 psi\",", "");
        Finding one = only(LineRegulatorLoss.of(pressures(house)));
        assertThat(one.ask().orElseThrow())
                .isEqualTo("What pressure does line regulator L lose at the full input of the boiler?");
        String both = house.replace(
                        "{\"id\":\"B\",",
                        "{\"id\":\"C\",\"from\":\"L\",\"material\":\"steel\",\"legs\":[\"5 ft\"]},{\"id\":\"B\",")
                .replace(
                        "\"appliances\":[",
                        "\"appliances\":[{\"id\":\"light\",\"input\":\"2000 Btu/h\",\"fedBy\":\"C\"},");
        assertThat(only(LineRegulatorLoss.of(pressures(both))).ask().orElseThrow())
                .isEqualTo("What pressure does line regulator L lose at the full input of everything behind it?");
        assertThat(only(LineRegulatorLoss.of(pressures(RIGHT.replace("\"0.5 psi\"", "\"0.51 psi\""))))
                        .ask())
                .isEmpty();
        // the tables of other pressures leave nothing out
        assertThat(LineRegulatorLoss.of(pressures(house.replace("\"outlet\":\"2 psi\"", "\"outlet\":\"5 psi\""))))
                .isEmpty();
        assertThat(LineRegulatorLoss.of(pressures(house.replace("\"kind\":\"line\"", "\"kind\":\"second-stage\""))))
                .isEmpty();
    }

    @Test
    void aLossIsAskedInWhateverOrderRegulatorsAreEntered() {
        String turned = PlannedHouse.empty()
                .regulator("P", "two-psi", "tank", "2 psi", "1 psi")
                .regulator("L", "line", "T", "11 in w.c.", "0.5 in w.c.")
                .section("T", "P", "steel", "10 ft")
                .text();
        assertThat(only(LineRegulatorLoss.of(pressures(turned))).at()).isEqualTo("L");
    }

    @Test
    void aLockUpNotEnteredIsJudgedByTheDefaultAndAsked() {
        Finding f = only(InletPressureHigh.of(
                pressures(RIGHT.replace("\"lockUp\":\"115 %\",", "").replace("13 in w.c.", "13.1 in w.c."))));
        assertThat(f.found()).contains("lock-up at 120 % (default, its own figure is not entered)");
        assertThat(f.confidence()).isEqualTo(Confidence.MEMORY);
        assertThat(f.ask().orElseThrow()).isEqualTo("At what pressure does L lock up?");
        Finding entered = only(InletPressureHigh.of(pressures(RIGHT.replace("13 in w.c.", "12.64 in w.c."))));
        assertThat(entered.confidence()).isEqualTo(Confidence.PRINT);
        assertThat(entered.ask()).isEmpty();
    }

    /** EHD 13 ends at 72,000 Btu/h in its table's first row (2018 IFGC Table 402.4(31), 5 ft). */
    @Test
    void moreThanTubingsFirstRowHasNoKnownPressureAndNamesTheFirstSuchSection() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "10 ft")
                .section("B", "A", "csst", "5 ft", "'installedSize':'13'")
                .section("C", "B", "csst", "5 ft", "'installedSize':'13'")
                .appliance(
                        "heater", "C", "80000 Btu/h", "'kind':'boiler','minInlet':'8 in w.c.','maxInlet':'14 in w.c.'");
        assertThat(pressures(house.text()).outlet(0).pressureAtInlet()).isEmpty();
        Finding f = only(InletPressureLow.of(pressures(house.text())));
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.found())
                .isEqualTo(
                        "The pressure at the boiler is not known: section B has 80,000 Btu/h, more than the first row"
                                + " of its table carries");
        assertThat(f.field()).isEqualTo("/sections/1/installedSize");
        PlannedHouse first = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "csst", "5 ft", "'installedSize':'13'")
                .section("B", "A", "csst", "5 ft", "'installedSize':'13'")
                .appliance(
                        "heater", "B", "80000 Btu/h", "'kind':'boiler','minInlet':'8 in w.c.','maxInlet':'14 in w.c.'");
        assertThat(only(InletPressureLow.of(pressures(first.text()))).field()).isEqualTo("/sections/0/installedSize");
        assertThat(InletPressureLow.of(pressures(
                        house.set("/appliances/0/input", "72000 Btu/h").text())))
                .extracting(Finding::severity)
                .doesNotContain(Severity.NOTE);
        assertThat(InletPressureLow.of(
                        pressures(house.without("/appliances/0/input").text())))
                .isEmpty();
    }

    @Test
    void aLeastInletOfARegulatorThatIsAskedTellsWhatItWillSee() {
        Finding f = only(InletPressureLow.of(pressures(RIGHT.replace(",\"minInlet\":\"5 psi\"", ""))));
        assertThat(f.found())
                .isEqualTo("The least inlet pressure of regulator R2 is not entered; it will see 9.54 psi (264.39 in."
                        + " w.c.)");
    }
}
