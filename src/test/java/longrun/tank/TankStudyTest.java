package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Figure;
import longrun.origin.Origin;
import longrun.plan.Plan;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The orchard house's tank, one thing changed at a time. Figures by the rule of the trade, worked by hand. */
class TankStudyTest {

    private static TankReport orchard() {
        return TankStudy.of(Houses.orchard());
    }

    private static TankReport changed(String piece, String other) {
        return TankStudy.of(Houses.orchard(piece, other));
    }

    private static double rule(TankReport r) {
        return r.capacityAtDesignBtuh().number();
    }

    private static Demand everything(TankReport r) {
        return r.demands().get(0);
    }

    @Test
    void fiveHundredGallonsAtThirtyPercentAndEightDegrees() {
        assertThat(rule(orchard())).isCloseTo(37.42 * 118 * 70 * 28 / 20, within(1e-6));
        assertThat(rule(orchard())).isCloseTo(433_000, within(500.0));
        assertThat(orchard().capacityAt20PsigBtuh().number()).isCloseTo(202_000, within(1000.0));
    }

    @Test
    void usableIsFromEightyPercentToTheRefillGauge() {
        assertThat(orchard().usableGal().number()).isCloseTo(250, within(1e-9));
        assertThat(changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"20 %\"")
                        .usableGal()
                        .number())
                .isCloseTo(300, within(1e-9));
        assertThat(orchard().usableGaugeLowGal().number()).isCloseTo(225, within(1e-9));
        assertThat(orchard().fullGal().number()).isCloseTo(400, within(1e-9));
        assertThat(orchard().fullGaugeLowGal().number()).isCloseTo(375, within(1e-9));
        assertThat(orchard().nowGal().number()).isCloseTo(310, within(1e-9));
    }

    @Test
    void everythingFiringIsTheSumOfTheInputsAndDoubtful() {
        assertThat(everything(orchard()).btuh().number()).isEqualTo(324_000);
        assertThat(everything(orchard()).status()).isEqualTo(Demand.Status.DOUBTFUL);
        assertThat(orchard().demands())
                .extracting(Demand::name)
                .containsExactly("everything firing", "winter evening", "mean of the design day");
        assertThat(orchard().demands().get(1).btuh().number()).isEqualTo(264_000);
    }

    @Test
    void theMeanOfTheDesignDayIsCarried() {
        Demand mean = orchard().demands().get(2);
        assertThat(mean.btuh().number()).isCloseTo(37_476, Percentage.withPercentage(0.1));
        assertThat(mean.status()).isEqualTo(Demand.Status.CARRIES);
    }

    @Test
    void colderEmptierAndMoreLoadEachMakeItWorse() {
        assertThat(rule(changed("\"8 degF\"", "\"3 degF\""))).isLessThan(rule(orchard()));
        assertThat(rule(changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"20 %\"")))
                .isLessThan(rule(orchard()));
        assertThat(everything(changed("199000", "399000")).status()).isEqualTo(Demand.Status.SHORT);
        assertThat(everything(changed("199000", "50000")).status()).isEqualTo(Demand.Status.CARRIES);
    }

    @Test
    void equalToTheRuleIsNotShort() {
        TankReport r =
                changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"324000 Btu/h\"");
        assertThat(everything(r).status()).isEqualTo(Demand.Status.CARRIES);
        TankReport less =
                changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"323999 Btu/h\"");
        assertThat(everything(less).status()).isEqualTo(Demand.Status.SHORT);
    }

    @Test
    void aShortPeakIsHeldForSomeMinutesAndFewerFromAnEmptierTank() {
        TankReport r = changed("199000", "599000");
        double minutes = everything(r).holdMinutes().number();
        assertThat(minutes).isBetween(10.0, 600.0);
        TankReport emptier = TankStudy.of(Samples.plan(Houses.ORCHARD
                .replace("199000", "599000")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"25 %\"")));
        assertThat(everything(emptier).holdMinutes().number()).isLessThan(minutes);
    }

    @Test
    void theSuppliersFigureOverrulesOurs() {
        TankReport r =
                changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"150000 Btu/h\"");
        assertThat(rule(r)).isEqualTo(150_000);
        assertThat(r.supplier()).isTrue();
        assertThat(r.ownRuleBtuh().number()).isCloseTo(433_000, within(500.0));
    }

    @Test
    void orientationAbsentLeavesTheVapourUnknown() {
        TankReport r = changed("\"orientation\": \"horizontal\", ", "");
        assertThat(r.capacityAtDesignBtuh().isKnown()).isFalse();
        assertThat(r.capacityAtDesignBtuh().missing()).anyMatch(m -> m.field().equals("/tank/orientation"));
        assertThat(everything(r).status()).isEqualTo(Demand.Status.UNKNOWN);
        assertThat(r.usableGal().number()).isEqualTo(250);
        assertThat(r.curve()).isEmpty();
    }

    @Test
    void minusTwentyGivesNothingAndTheFindingSaysWhichNothing() {
        for (String cold : List.of("-20 degF", "-50 degF")) {
            Plan plan = Houses.orchard("\"8 degF\"", "\"" + cold + "\"");
            TankReport r = TankStudy.of(plan);
            assertThat(rule(r)).isZero();
            List<Finding> findings = TankFindings.of(plan, r);
            assertThat(findings).singleElement().satisfies(f -> {
                assertThat(f.rule()).isEqualTo("tank-vapour-mean");
                assertThat(f.severity()).isEqualTo(Severity.MUST_FIX);
                assertThat(f.found())
                        .contains(cold.equals("-20 degF") ? "cannot feed a 10 psi regulator" : "gas stops altogether");
            });
        }
    }

    @Test
    void aMeanOverTheRuleMustBeMended() {
        Plan plan = Houses.orchard("38000", "900000");
        assertThat(TankFindings.of(plan, TankStudy.of(plan)))
                .anyMatch(f -> f.rule().equals("tank-vapour-mean") && f.severity() == Severity.MUST_FIX);
    }

    @Test
    void aPeakOverTheRuleIsACautionWithMinutes() {
        Plan plan = Houses.orchard("199000", "599000");
        assertThat(TankFindings.of(plan, TankStudy.of(plan))).singleElement().satisfies(f -> {
            assertThat(f.rule()).isEqualTo("tank-vapour-peak");
            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
            assertThat(f.found()).contains("724,000 Btu/h").contains("held for");
        });
    }

    @Test
    void aDoubtfulPeakIsAQuestionForTheSupplier() {
        Plan plan = Houses.orchard();
        assertThat(TankFindings.of(plan, TankStudy.of(plan)))
                .singleElement()
                .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
    }

    @Test
    void aLoadThatIsCarriedBringsNoFinding() {
        Plan plan = Houses.orchard("199000", "50000");
        assertThat(TankFindings.of(plan, TankStudy.of(plan))).isEmpty();
    }

    @Test
    void aBuriedTankIsReckonedByTheGroundNotTheAir() {
        Plan plan = Houses.orchard("above-ground", "underground");
        TankReport r = TankStudy.of(plan);
        double s = 2 * Math.PI * (118 / 12.0) / arcosh(2 * (1 + 37.42 / 24) / (37.42 / 12));
        double liquid = Propane.degF(10.7);
        double expected = s * 0.6 * (48 - liquid) * VapourRule.wettedShare(0.3) * 21548 / Propane.latent(liquid);
        assertThat(rule(r)).isCloseTo(expected, Percentage.withPercentage(1e-6));
        assertThat(rule(TankStudy.of(Samples.plan(
                        Houses.ORCHARD.replace("above-ground", "underground").replace("\"8 degF\"", "\"-30 degF\"")))))
                .isEqualTo(rule(r));
        assertThat(TankFindings.of(plan, r)).anyMatch(f -> f.found().contains("derived"));
        assertThat(TankStudy.of(Samples.plan(Houses.ORCHARD
                                .replace("above-ground", "underground")
                                .replace("\"groundTemp\": \"48 degF\", ", "")))
                        .capacityAtDesignBtuh()
                        .isKnown())
                .isFalse();
    }

    private static double arcosh(double x) {
        return Math.log(x + Math.sqrt(x * x - 1));
    }

    @Test
    void anUprightTankWetsOnlyItsLowerShell() {
        TankReport r = TankStudy.of(Samples.plan(
                Houses.ORCHARD.replace("\"horizontal\"", "\"vertical\"").replace("500 gal", "120 gal")));
        assertThat(rule(r)).isCloseTo(30 * 53 * VapourRule.k(0.3) * 1.4, within(1e-6));
        assertThat(r.derived()).isTrue();
    }

    @Test
    void twoTanksAlikeGiveTwice() {
        TankReport two = changed("\"kind\": \"asme\"", "\"kind\": \"asme\", \"count\": 2");
        assertThat(rule(two)).isCloseTo(2 * rule(orchard()), within(1e-6));
        assertThat(two.usableGal().number()).isCloseTo(500, within(1e-9));
    }

    @Test
    void aCylinderFollowsItsTableAndIsUnknownBelowIt() {
        String cylinder = Houses.ORCHARD
                .replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\", \"count\": 4")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"40 lb\"")
                .replace("\"62 %\"", "\"70 lb\"");
        TankReport r = TankStudy.of(Samples.plan(cylinder));
        assertThat(rule(r)).isCloseTo(4 * (55000 + 0.4 * 24000), within(1e-6));
        assertThat(r.usableGal().number()).isCloseTo(4 * 60 / 4.24, within(1e-9));
        assertThat(r.capacityAt20PsigBtuh().isKnown()).isFalse();
        assertThat(TankFindings.of(
                        Samples.plan(cylinder.replace("199000", "50000")),
                        TankStudy.of(Samples.plan(cylinder.replace("199000", "50000")))))
                .allSatisfy(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.NOTE);
                    assertThat(f.required()).contains("supplier").doesNotContain("unknown");
                });
        TankReport cold = TankStudy.of(Samples.plan(cylinder.replace("\"8 degF\"", "\"-1 degF\"")));
        assertThat(cold.capacityAtDesignBtuh().isKnown()).isFalse();
        assertThat(TankStudy.of(Samples.plan(cylinder.replace("\"100 lb\"", "\"420 lb\"")))
                        .capacityAtDesignBtuh()
                        .isKnown())
                .isFalse();
    }

    @Test
    void aHigherLeastTankPressureGivesLess() {
        TankReport r = changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"leastTankPressure\": \"20 psi\"");
        assertThat(rule(r)).isCloseTo(orchard().capacityAt20PsigBtuh().number(), within(1e-6));
    }

    @Test
    void theCurveIsZeroUnderMinusTwentyAndFlatFromTwenty() {
        assertThat(orchard().curve()).isNotEmpty().allSatisfy(p -> {
            if (p.airF() <= -20) {
                assertThat(p.capacityBtuh()).hasValue(0);
            }
            if (p.airF() >= 20) {
                assertThat(p.capacityBtuh()).hasValueCloseTo(37.42 * 118 * 70 * 2, within(1e-6));
            }
        });
        assertThat(orchard().curve()).anyMatch(p -> p.airF() == 8);
    }

    @Test
    void theSmallestStandardTankCarriesWhatIsAskedAndTheNextSmallerDoesNot() {
        TankReport.SizeChoice above = orchard().smallest().get(0);
        // 320 gal: 30 x 114 x 70 x 1.4 = 335,160; 250 gal: 31.5 x 86.5 x 70 x 1.4 = 267,026
        assertThat(above.size())
                .hasValueSatisfying(s -> assertThat(s.waterGal()).isEqualTo(320));
        assertThat(above.distances()).isPresent();
    }

    @Test
    void everyNumberSaysWhereItIsFrom() {
        Deque<Origin> open = new ArrayDeque<>(orchard().origins());
        assertThat(open).isNotEmpty();
        while (!open.isEmpty()) {
            Origin o = open.pop();
            assertThat(o.figure()).isNotBlank();
            assertThat(o.how()).isNotBlank();
            assertThat(o.value()).isNotBlank();
            open.addAll(o.inputs());
        }
    }

    @Test
    void withNothingEnteredNothingIsKnownAndNothingIsZero() {
        for (String plan : List.of(
                "{\"format\":\"longrun-plan/1\"}",
                "{\"format\":\"longrun-plan/1\",\"tank\":{},\"use\":{},\"site\":{}}",
                "{\"format\":\"longrun-plan/1\",\"tank\":{\"kind\":\"asme\"},\"use\":{\"hotWater\":{},\"heating\":[{}],\"others\":[{}],\"occasions\":[{}]},\"appliances\":[{\"id\":\"a\"}]}",
                "{\"format\":\"longrun-plan/1\",\"tank\":{\"kind\":\"cylinder\"}}")) {
            TankReport r = TankStudy.of(Samples.plan(plan));
            for (Figure f : List.of(r.usableGal(), r.capacityAtDesignBtuh(), r.capacityAt20PsigBtuh(), r.nowGal())) {
                assertThat(f.isKnown()).as(f.name()).isFalse();
                assertThat(f.missing()).as(f.name()).isNotEmpty();
            }
            assertThat(r.demands()).allSatisfy(d -> assertThat(d.status()).isEqualTo(Demand.Status.UNKNOWN));
            assertThat(r.curve()).isEmpty();
            TankFindings.of(Samples.plan(plan), r)
                    .forEach(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
        }
    }
}
