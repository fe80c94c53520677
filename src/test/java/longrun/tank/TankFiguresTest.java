package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import longrun.Samples;
import longrun.origin.Missing;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Each figure of a tank by the way that is its own, for one tank and several, and what it lacks by name. */
class TankFiguresTest {

    private static TankReport changed(String piece, String other) {
        return TankStudy.of(Houses.orchard(piece, other));
    }

    private static TankReport orchard() {
        return TankStudy.of(Houses.orchard());
    }

    private static final String CYLINDERS = Houses.ORCHARD
            .replace(
                    "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\"",
                    "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\", \"count\": 4")
            .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"40 lb\"")
            .replace("\"62 %\"", "\"70 lb\"");

    @Test
    void eachBodyNamesTheWayItsVapourIsReckoned() {
        assertThat(orchard().capacityAtDesignBtuh().how()).startsWith("D x L x K(fill) x M(air)");
        assertThat(orchard().derived()).isFalse();
        assertThat(changed("above-ground", "underground").capacityAtDesignBtuh().how())
                .startsWith("S k (ground - liquid) x wetted share");
        assertThat(changed("above-ground", "underground").derived()).isTrue();
        assertThat(TankStudy.of(Samples.plan(Houses.ORCHARD
                                .replace("\"horizontal\"", "\"vertical\"")
                                .replace("500 gal", "120 gal")))
                        .capacityAtDesignBtuh()
                        .how())
                .startsWith("same heat through each square foot as the rule");
        assertThat(TankStudy.of(Samples.plan(CYLINDERS)).capacityAtDesignBtuh().how())
                .isEqualTo("table of the 100 lb cylinder");
    }

    @Test
    void aReadingThatIsMissingIsAskedForAndNotTheSuppliersFigure() {
        assertThat(changed(", \"refillAt\": \"30 %\"", "")
                        .capacityAtDesignBtuh()
                        .missing())
                .extracting(Missing::field)
                .contains("/tank/refillAt");
        // the cylinder's table begins at 0 degF
        assertThat(TankStudy.of(Samples.plan(CYLINDERS.replace("\"8 degF\"", "\"-1 degF\"")))
                        .capacityAtDesignBtuh()
                        .missing())
                .singleElement()
                .satisfies(m -> {
                    assertThat(m.field()).isEqualTo("/tank/vapourCapacity");
                    assertThat(m.words()).contains("the table of the 100 lb cylinder runs from 0 to 70 degF");
                });
    }

    @Test
    void theCurveRunsFromFiftyBelowToSixtyByFivesAndThroughTheDesignTemperature() {
        List<TankReport.CurvePoint> curve = orchard().curve();
        assertThat(curve).hasSize(24);
        assertThat(curve.get(0).airF()).isEqualTo(-50);
        assertThat(curve.get(23).airF()).isEqualTo(60);
        assertThat(curve)
                .filteredOn(p -> p.airF() == 8)
                .singleElement()
                .satisfies(p -> assertThat(p.plannedBtuh().orElseThrow())
                        .isCloseTo(orchard().plannedBtuh().number(), within(1e-6)));
    }

    @Test
    void aCylindersCurveHasNoFigureAtThePressureToPlanWith() {
        List<TankReport.CurvePoint> curve =
                TankStudy.of(Samples.plan(CYLINDERS)).curve();
        assertThat(curve).isNotEmpty().allMatch(p -> p.plannedBtuh().equals(OptionalDouble.empty()));
        assertThat(curve)
                .filteredOn(p -> p.airF() == 0)
                .singleElement()
                .satisfies(p -> assertThat(p.capacityBtuh()).hasValueCloseTo(4 * 55_000.0, within(1e-6)));
    }

    private static final String TWO = Houses.ORCHARD
            .replace("\"tank\": {", "\"tanks\": [{")
            .replace(
                    "\"30 %\" },",
                    "\"30 %\"%s }, { \"kind\": \"asme\", \"waterCapacity\": \"500 gal\", \"orientation\":"
                            + " \"horizontal\", \"placement\": \"above-ground\", \"gauge\": \"62 %%\","
                            + " \"gaugeDate\": \"2026-10-01\", \"refillAt\": \"30 %%\"%s }],");

    private static TankReport two(String first, String second) {
        return TankStudy.of(Samples.plan(TWO.replace("%%", "@@")
                .replaceFirst("%s", first)
                .replaceFirst("%s", second)
                .replace("@@", "%")));
    }

    @Test
    void besideATankOfOurReckoningASuppliersFigureStandsAsItIsAtEachTemperature() {
        String figure = ", \"vapourCapacity\": \"100000 Btu/h\"";
        for (TankReport r : List.of(two(figure, ""), two("", figure))) {
            for (int p = 0; p < r.curve().size(); p++) {
                assertThat(r.curve().get(p).capacityBtuh().orElseThrow())
                        .isCloseTo(
                                100_000
                                        + orchard()
                                                .curve()
                                                .get(p)
                                                .capacityBtuh()
                                                .orElseThrow(),
                                within(1e-6));
            }
        }
        // where every tank has one, the curve is our own reckoning beside them
        TankReport both = two(figure, figure);
        assertThat(both.supplier()).isTrue();
        assertThat(both.curve().get(0).capacityBtuh()).hasValue(0);
    }

    @Test
    void twoTanksAlikeHoldAndUseTwiceTheGallons() {
        TankReport counted = changed("\"kind\": \"asme\"", "\"kind\": \"asme\", \"count\": 2");
        for (TankReport r : List.of(counted, two("", ""))) {
            assertThat(r.waterGal().number()).isEqualTo(1000);
            assertThat(r.nowGal().number()).isCloseTo(620, within(1e-9));
            assertThat(r.refillGal().number()).isCloseTo(300, within(1e-9));
            assertThat(r.usableGal().number()).isCloseTo(500, within(1e-9));
            // the same share of each is left at the same time, so the same peak is held as by one tank at half of it
            assertThat(r.demands().get(0).holdMinutes().number())
                    .isCloseTo(
                            TankStudy.of(Samples.plan(Houses.ORCHARD
                                            .replace("60000", "30000")
                                            .replace("199000", "99500")
                                            .replace("65000", "32500")))
                                    .demands()
                                    .get(0)
                                    .holdMinutes()
                                    .number(),
                            Percentage.withPercentage(0.01));
        }
    }

    @Test
    void gallonsNameTheSharesTheyAreMadeOf() {
        assertThat(orchard().usableGal().how()).isEqualTo("(80 % - refill gauge) x water capacity");
        assertThat(orchard().fullGal().how()).isEqualTo("80 % of water capacity");
        assertThat(orchard().fullGaugeLowGal().how()).isEqualTo("80 % of water capacity, less 5 % of capacity");
        assertThat(orchard().waterGal().how()).isEqualTo("capacity x tanks alike");
        assertThat(orchard().nowGal().how()).isEqualTo("gauge x capacity");
        assertThat(TankStudy.of(Samples.plan(CYLINDERS)).usableGal().how())
                .isEqualTo("full by weight less the refill weight");
    }

    @Test
    void aRefillGaugeAtTheMarkOfADeliveryLeavesNothingToUse() {
        assertThat(changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"80 %\"")
                        .usableGal()
                        .missing())
                .singleElement()
                .satisfies(m -> {
                    assertThat(m.field()).isEqualTo("/tank/refillAt");
                    assertThat(m.words()).isEqualTo("a refill gauge below the level a delivery fills to");
                });
        assertThat(changed(", \"refillAt\": \"30 %\"", "").usableGal().missing())
                .extracting(Missing::words)
                .noneMatch(w -> w.startsWith("a refill gauge below"));
    }

    /** 37.42 x 118 x 70 x 1.4 Btu/h: a supplier who counts on the rule's own figure is held as long as the rule. */
    @Test
    void aSuppliersFigureFallsWithTheLevelAsOursDoes() {
        String same = String.format(java.util.Locale.ROOT, "%.4f Btu/h", 37.42 * 118 * 70 * 1.4);
        TankReport r =
                changed("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"" + same + "\"");
        assertThat(r.demands().get(0).holdMinutes().number())
                .isCloseTo(orchard().demands().get(0).holdMinutes().number(), Percentage.withPercentage(0.01));
    }

    @Test
    void aSizeIsSoldUnderItsCapacityWithinAHundredthAndUnderItsOtherName() {
        StandardTanks.Size s = StandardTanks.find(
                        longrun.plan.choice.TankKind.ASME, longrun.plan.choice.Orientation.HORIZONTAL, 320)
                .orElseThrow();
        for (double sold : List.of(316.8, 320.0, 323.2, 326.8, 330.0, 333.3)) {
            assertThat(s.holds(sold)).as("%s gal", sold).isTrue();
        }
        for (double other : List.of(310.0, 316.7, 323.3, 326.6, 333.4)) {
            assertThat(s.holds(other)).as("%s gal", other).isFalse();
        }
    }

    @Test
    void ofTwoShellsOfOneCapacityTheOneThatGivesLessIsTaken() {
        for (StandardTanks.Size size : StandardTanks.all()) {
            double least = StandardTanks.all().stream()
                    .filter(o -> o.kind() == size.kind() && o.orientation() == size.orientation())
                    .filter(o -> o.waterGal() == size.waterGal())
                    .min(Comparator.comparingDouble(o -> o.diameterIn() * o.lengthIn()))
                    .map(o -> o.diameterIn() * o.lengthIn())
                    .orElseThrow();
            StandardTanks.Size found = StandardTanks.find(size.kind(), size.orientation(), size.waterGal())
                    .orElseThrow();
            assertThat(found.diameterIn() * found.lengthIn()).isEqualTo(least);
            StandardTanks.horizontal().stream()
                    .filter(h -> h.waterGal() == size.waterGal()
                            && h.kind() == size.kind()
                            && h.orientation() == size.orientation())
                    .forEach(h -> assertThat(h.diameterIn() * h.lengthIn()).isEqualTo(least));
        }
    }

    @Test
    void aWaterHeaterThatIsNotNamedIsTheOnlyOneOrIsAskedFor() {
        String nameless = Houses.ORCHARD.replace("\"onDemand\": { \"appliance\": \"heater\",", "\"onDemand\": {");
        assertThat(fields(nameless)).isEmpty();
        String second = nameless.replace(
                "{ \"id\": \"range\", ",
                "{ \"id\": \"other\", \"kind\": \"storage-water-heater\", \"input\": \"40000 Btu/h\" }, { \"id\": \"range\", ");
        assertThat(fields(second)).contains("/use/hotWater/onDemand/appliance");
        // one that has its own gallons is not in question
        assertThat(fields(second.replace(
                        "\"others\": [",
                        "\"others\": [ { \"appliance\": \"other\", \"volumePerYear\": \"50 gal\" }, ")))
                .isEmpty();
        assertThat(
                        fields(
                                Houses.ORCHARD.replace(
                                        "{ \"id\": \"range\", ",
                                        "{ \"id\": \"other\", \"kind\": \"storage-water-heater\", \"input\": \"40000 Btu/h\" }, { \"id\": \"range\", ")))
                .containsExactly("/use/others");
    }

    private static List<String> fields(String json) {
        return UnusedAppliances.ofTheYear(Samples.plan(json)).stream()
                .map(Missing::field)
                .distinct()
                .toList();
    }

    @Test
    void aRangeWithoutAUseLeavesTheDesignDayOpenAndAGeneratorDoesNot() {
        String unused = Houses.ORCHARD.replace("{ \"appliance\": \"range\", \"volumePerYear\": \"35 gal\" }", "");
        assertThat(TankStudy.of(Samples.plan(unused)).demands().get(2).btuh().isKnown())
                .isFalse();
        assertThat(changed(
                                "{ \"id\": \"range\", ",
                                "{ \"id\": \"gen\", \"kind\": \"standby-generator\", \"input\": \"200000 Btu/h\" }, { \"id\": \"range\", ")
                        .demands()
                        .get(2)
                        .btuh()
                        .isKnown())
                .isTrue();
    }
}
