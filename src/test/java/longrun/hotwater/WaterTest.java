package longrun.hotwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import java.util.Arrays;
import java.util.List;
import longrun.Samples;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.quantity.Elevation;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Water: its heat against IAPWS-97, mains temperature against a worked row, altitude against both readings. */
class WaterTest {

    private static final SecondWay WAY = SecondWay.get("water-heat");

    private static int compared;
    private static double worst;

    @AfterAll
    static void tellWhatTheSteamTablesFound() {
        if (compared == WAY.count()) {
            Ran.told(WAY.id(), compared, 0, worst);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {34, 40, 45, 50, 60, 75, 90, 105, 120, 130, 140, 160})
    void heatToWarmWaterFollowsTheSteamTables(double degF) throws Exception {
        IF97 water = new IF97();
        double kelvin = (degF + 459.67) / 1.8;
        double density = water.densityPT(0.4, kelvin) / 0.45359237 * 3.785411784e-3; // lb/gal
        double heat = water.isobaricHeatCapacityPT(0.4, kelvin) / 4.1868; // Btu/(lb.degF)
        assertThat(WaterHeat.k(degF)).isCloseTo(60 * density * heat, Percentage.withPercentage(WAY.within()));
        worst = Math.max(worst, 100 * Math.abs(WaterHeat.k(degF) / (60 * density * heat) - 1));
        compared++;
    }

    @ParameterizedTest
    @CsvSource({"40, 502.9", "50, 501.5", "60, 500.4", "90, 497.3", "120, 494.1", "140, 491.8"})
    void publishedPointsComeBack(double degF, double k) {
        assertThat(WaterHeat.k(degF)).isCloseTo(k, within(1e-9));
    }

    /** 4,500 Btu/h at a rise of 67 degF: 8.1 gal/h. */
    @Test
    void aHeatPumpRecoversEightGallonsAnHour() {
        assertThat(WaterHeat.gallonsPerHour(4500, 58, 125)).isCloseTo(8.1, within(0.05));
    }

    /** A northern town: mean 46.2 degF, warmest month 70.0, coldest 19.0; averages over each month's days. The worked row's own
     * inputs are rounded, which moves it by up to 0.05 degF. */
    @Test
    void mainsTemperatureOfAWorkedYear() {
        double[] worked = {43.1, 41.5, 42.7, 46.4, 51.6, 57.0, 61.1, 62.8, 61.6, 57.8, 52.6, 47.2};
        List<Double> months = ColdWater.mainsMonths(46.2, 51.0, false);
        for (int m = 0; m < 12; m++) {
            assertThat(months.get(m)).isCloseTo(worked[m], within(0.1));
        }
        assertThat(ColdWater.yearMean(months)).isCloseTo(52.2, within(0.05));
    }

    @Test
    void mainsWaterNeverFreezes() {
        assertThat(ColdWater.mainsMonths(20, 60, false)).allMatch(t -> t >= 32);
    }

    @Test
    void coldWaterAsEnteredByTheWellOrByTheMains() {
        String site = "{\"format\":\"longrun-plan/1\",\"site\":{%s}}";
        String climate = "\"monthlyMeanTemp\":[\"19 degF\",\"21.9 degF\",\"31.1 degF\",\"46 degF\",\"56.8 degF\",\"66.7"
                + " degF\",\"70 degF\",\"67.6 degF\",\"59.2 degF\",\"47.7 degF\",\"37 degF\",\"29.3 degF\"]";
        Months entered =
                ColdWater.of(Samples.plan(site.formatted("\"coldWater\":{\"source\":\"well\",\"temp\":\"51 degF\"}")));
        assertThat(entered.values()).hasSize(12).allMatch(t -> t == 51);
        Months well = ColdWater.of(Samples.plan(site.formatted(climate + ",\"coldWater\":{\"source\":\"well\"}")));
        assertThat(well.get(0)).isCloseTo(46.1, within(0.1)).isEqualTo(well.get(6));
        Months mains = ColdWater.of(Samples.plan(site.formatted(climate)));
        assertThat(mains.get(7)).isGreaterThan(mains.get(1) + 15);
        assertThat(ColdWater.of(Samples.plan("{\"format\":\"longrun-plan/1\"}")).isKnown())
                .isFalse();
    }

    @Test
    void altitudeTakesFourPercentAThousandFeetInTwoReadings() {
        assertThat(Altitude.share(Elevation.ofFeet(2000))).isEqualTo(1);
        assertThat(Altitude.shareFromSea(Elevation.ofFeet(5000))).isCloseTo(0.80, within(1e-12));
        assertThat(Altitude.shareAboveFree(Elevation.ofFeet(5000))).isCloseTo(0.88, within(1e-12));
        assertThat(Altitude.share(Elevation.ofFeet(5000))).isCloseTo(0.80, within(1e-12));
        assertThat(Altitude.share(Elevation.ofFeet(-200))).isEqualTo(1);
    }

    @Test
    void altitudeIsFoundAboveTwoThousandFeetAndAskedWhereUnknown() {
        String plan =
                "{\"format\":\"longrun-plan/1\",\"site\":{\"elevation\":\"%s\"},\"appliances\":[{\"id\":\"f\",\"kind\":\"furnace\",\"input\":\"60000"
                        + " Btu/h\"},{\"id\":\"r\",\"kind\":\"range\",\"input\":\"65000 Btu/h\"}]}";
        assertThat(Altitude.findings(Samples.plan(plan.formatted("2000 ft")))).isEmpty();
        assertThat(Altitude.findings(Samples.plan(plan.formatted("5000 ft"))))
                .satisfiesExactly(
                        f -> {
                            assertThat(f.at()).isEqualTo("f");
                            assertThat(f.found()).contains("48,000 Btu/h").contains("52,800 Btu/h");
                        },
                        r -> {
                            assertThat(r.at()).isEqualTo("r");
                            assertThat(r.found()).contains("52,000 Btu/h").contains("57,200 Btu/h");
                        });
        assertThat(Altitude.findings(Samples.plan(plan.replace("\"elevation\":\"%s\"", ""))))
                .singleElement()
                .satisfies(f -> assertThat(f.field()).isEqualTo("/site/elevation"));
    }

    /**
     * Burch and Christensen 2007: south of the equator the phase turns about, -90 becomes +90. The months of an open
     * building-simulation test set (mean 51.6 degF), put half a year on, have the same mean and swing.
     */
    @Test
    void mainsAreWarmestAfterTheSouthernSummer() {
        List<Double> south = ColdWater.mainsMonths(51.6, 41.7, true);
        List<Double> north = ColdWater.mainsMonths(51.6, 41.7, false);
        for (int m = 0; m < 12; m++) {
            assertThat(south.get(m)).isCloseTo(2 * (51.6 + 6) - north.get(m), within(1e-9));
        }
        double[] air = {72.1, 72.7, 66.5, 50.1, 37.2, 34.6, 33.4, 31.9, 43.0, 42.5, 59.9, 73.6};
        StringBuilder months = new StringBuilder();
        for (double a : air) {
            months.append(months.isEmpty() ? "" : ",").append("\"").append(a).append(" degF\"");
        }
        String plan = "{\"format\":\"longrun-plan/1\",\"site\":{\"monthlyMeanTemp\":[" + months + "]}}";
        Months cold = ColdWater.of(Samples.plan(plan));
        assertThat(cold.get(1)).isGreaterThan(cold.get(7) + 10);
        assertThat(cold.how()).contains("south");
    }

    private static final String CLIMATE = "\"monthlyMeanTemp\":[\"19 degF\",\"21.9 degF\",\"31.1 degF\",\"46"
            + " degF\",\"56.8 degF\",\"66.7 degF\",\"70 degF\",\"67.6 degF\",\"59.2 degF\",\"47.7 degF\",\"37"
            + " degF\",\"29.3 degF\"]";

    private static Plan site(String entries) {
        return Samples.plan("{\"format\":\"longrun-plan/1\",\"site\":{" + entries + "}}");
    }

    /** Burch and Christensen 2007: R and the swing of 70 less 19 degF about the day-weighted mean. */
    @Test
    void mainsWithoutATemperatureFollowTheFormula() {
        Months mains = ColdWater.of(site(CLIMATE + ",\"coldWater\":{\"source\":\"mains\"}"));
        double mean =
                ColdWater.yearMean(List.of(19.0, 21.9, 31.1, 46.0, 56.8, 66.7, 70.0, 67.6, 59.2, 47.7, 37.0, 29.3));
        assertThat(mains.values()).isEqualTo(ColdWater.mainsMonths(mean, 51, false));
        assertThat(mains.how()).contains("Burch and Christensen 2007").doesNotContain("south");
        assertThat(mains.from()).hasSize(2);
        assertThat(mains.from().get(1).number()).isEqualTo(51);
    }

    @Test
    void twelveTemperaturesAreOfTheTwelveMonths() {
        StringBuilder twelve = new StringBuilder();
        for (int m = 0; m < 12; m++) {
            twelve.append(m == 0 ? "" : ",").append("\"").append(40 + m).append(" degF\"");
        }
        Months cold = ColdWater.of(site("\"coldWater\":{\"temp\":[" + twelve + "]}"));
        assertThat(cold.values()).hasSize(12).startsWith(40.0, 41.0).endsWith(51.0);
        assertThat(cold.how()).isEqualTo("entered");
    }

    @Test
    void theMainsFormulaStandsInWhereNeitherSourceNorTemperatureIsEntered() {
        assertThat(ColdWater.mainsAssumed(site(CLIMATE))).isTrue();
        assertThat(ColdWater.mainsAssumed(Samples.plan("{\"format\":\"longrun-plan/1\"}")))
                .isTrue();
        assertThat(ColdWater.mainsAssumed(site("\"coldWater\":{}"))).isTrue();
        assertThat(ColdWater.mainsAssumed(site("\"coldWater\":{\"source\":\"mains\"}")))
                .isFalse();
        assertThat(ColdWater.mainsAssumed(site("\"coldWater\":{\"temp\":\"51 degF\"}")))
                .isFalse();
    }

    /** South of the equator the warmest month falls between October and March. */
    @ParameterizedTest
    @CsvSource({"0, true", "2, true", "3, false", "6, false", "8, false", "9, true", "11, true"})
    void theWarmestMonthTellsTheHemisphere(int warmest, boolean south) {
        Double[] months = new Double[12];
        Arrays.fill(months, 50.0);
        months[warmest] = 70.0;
        assertThat(ColdWater.south(List.of(months))).isEqualTo(south);
    }

    /** IAPWS-97 in steps of the printed rows, on with the last slope beyond them. */
    @ParameterizedTest
    @CsvSource({"30, 504.3", "45, 502.2", "130, 492.95", "150, 490.65", "160, 489.5"})
    void heatOfWaterIsStraightBetweenAndBeyondTheRows(double degF, double k) {
        assertThat(WaterHeat.k(degF)).isCloseTo(k, within(1e-9));
        assertThat(WaterHeat.btu(60, degF - 10, degF + 10)).isCloseTo(k * 20, within(1e-6));
        assertThat(WaterHeat.gallonsPerHour(k * 20, degF - 10, degF + 10)).isCloseTo(60, within(1e-9));
    }
}
