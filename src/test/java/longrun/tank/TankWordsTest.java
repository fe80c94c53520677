package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Plan;
import org.junit.jupiter.api.Test;

/** What is said of a tank's vapour: once, with its figures, and asked of whoever can answer. */
class TankWordsTest {

    private static final String SMALL_LOADS =
            Houses.ORCHARD.replace("199000", "20000").replace("60000", "20000").replace("65000", "5000");

    private static List<Finding> findings(String json) {
        Plan plan = Samples.plan(json);
        return TankFindings.of(plan, TankStudy.of(plan));
    }

    private static Finding only(String json) {
        List<Finding> all = findings(json);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    /** The rule of the trade is for tanks above ground; heat through the soil is derived, so it is the supplier's to say. */
    @Test
    void aBuriedTankThatIsEnoughAsksTheSupplierAllTheSame() {
        String buried = SMALL_LOADS.replace("above-ground", "underground");
        Finding f = only(buried);
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.found()).contains("derived from heat through the soil");
        assertThat(f.field()).isEqualTo("/tank/vapourCapacity");
        assertThat(findings(SMALL_LOADS)).isEmpty();
        assertThat(findings(buried.replace(
                        "\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"200000 Btu/h\"")))
                .isEmpty();
        String several = buried.replace("\"tank\": {", "\"tanks\": [{").replace("\"30 %\" },", "\"30 %\" }],");
        assertThat(only(several).field()).isEqualTo("/tanks/0/vapourCapacity");
    }

    @Test
    void whereABuriedTankIsTooSmallThatIsSaidAndNothingBeside() {
        assertThat(findings(
                        Houses.ORCHARD.replace("above-ground", "underground").replace("199000", "1990000")))
                .extracting(Finding::severity)
                .containsExactly(Severity.CAUTION)
                .isNotEmpty();
        assertThat(findings(
                        Houses.ORCHARD.replace("above-ground", "underground").replace("199000", "1990000")))
                .noneMatch(f -> f.found().contains("derived from heat through the soil"));
    }

    @Test
    void aBuriedTankThatIsInDoubtIsAskedAboutOnce() {
        boolean seen = false;
        for (int heater = 10_000; heater <= 250_000; heater += 10_000) {
            String json = SMALL_LOADS
                    .replace("above-ground", "underground")
                    .replace(
                            "\"on-demand-water-heater\", \"input\": \"20000",
                            "\"on-demand-water-heater\", \"input\": \"" + heater);
            Plan plan = Samples.plan(json);
            TankReport report = TankStudy.of(plan);
            if (report.demands().get(0).status() == Demand.Status.DOUBTFUL) {
                seen = true;
                assertThat(TankFindings.of(plan, report))
                        .as("%s", heater)
                        .singleElement()
                        .satisfies(f -> {
                            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
                            assertThat(f.found()).contains("derived from heat through the soil");
                        });
            }
        }
        assertThat(seen).isTrue();
    }

    @Test
    void whatIsLackingIsAskedByName() {
        assertThat(findings(Houses.ORCHARD.replace("\"designLoad\": \"38000 Btu/h\", ", "")))
                .extracting(Finding::found)
                .anyMatch(f -> f.startsWith("The mean of the design day is unknown. Still to be entered: "));
        assertThat(findings(Houses.ORCHARD.replace("\"orientation\": \"horizontal\", ", "")))
                .extracting(Finding::found)
                .anyMatch(f -> f.startsWith("The vapour the tank gives is unknown. Still to be entered: "));
        assertThat(findings(SMALL_LOADS.replace(", \"input\": \"5000 Btu/h\"", "")))
                .extracting(Finding::found)
                .anyMatch(f -> f.startsWith("What everything firing needs is unknown. Still to be entered: "));
    }

    /** 37.42 in. x 118 in. x K 70 at 30 % x M 1.4 at 8 degF gives 432,725 Btu/h (rule of the trade). */
    @Test
    void aPeakOverTheRuleTellsBothFiguresAndWhatMendsIt() {
        Finding f = only(Houses.ORCHARD.replace("199000", "599000"));
        assertThat(f.found())
                .startsWith("Everything firing needs 724,000 Btu/h; the tank gives ")
                .contains(" while keeping 20 psi")
                .contains(" at the refill gauge and the design temperature, ")
                .contains("432,725 Btu/h at most for a short time; held for ")
                .doesNotContain("derived");
        assertThat(f.required()).isEqualTo("at most 432,725 Btu/h");
        assertThat(f.remedy()).startsWith("Take a larger tank");
        assertThat(f.field()).isEqualTo("/tank/vapourCapacity");
    }

    @Test
    void aDoubtfulPeakIsHeldAgainstThePressureToPlanWith() {
        Finding f = only(Houses.ORCHARD);
        assertThat(f.required()).startsWith("at most 2").contains("Btu/h while keeping 20 psi");
        assertThat(f.remedy()).startsWith("Ask the supplier which figure he counts on");
    }

    @Test
    void aMeanThatIsOverSaysWhatItTakesForGranted() {
        assertThat(findings(Houses.ORCHARD.replace("38000", "900000")))
                .filteredOn(f -> f.rule().equals("tank-vapour-mean"))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).contains("; ").contains("balance point of 62 degF"));
    }

    @Test
    void whatACylinderGivesAtThePressureToPlanWithIsUnknownAndSaidSo() {
        String cylinders = Houses.ORCHARD
                .replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\", \"count\": 4")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"40 lb\"")
                .replace("\"62 %\"", "\"70 lb\"");
        assertThat(findings(cylinders.replace("199000", "50000")))
                .filteredOn(f -> f.rule().equals("tank-vapour-peak"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.found()).contains("the tank gives an unknown amount while keeping 20 psi");
                    assertThat(f.required()).startsWith("the supplier's own figure, in Btu/h");
                });
    }
}
