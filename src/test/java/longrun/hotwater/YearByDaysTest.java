package longrun.hotwater;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.heater.Chain;
import longrun.hotwater.heater.ChainDay;
import longrun.hotwater.heater.DayTally;
import longrun.hotwater.heater.StorageHeater;
import longrun.hotwater.heater.StorageTank;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The year against all its days run one by one, with cold water that differs from month to month; what it is made from. */
class YearByDaysTest {

    private static final String TEXT = Samples.text("sample-plan.json")
            .replace("\"source\": \"well\", \"temp\": \"51 degF\"", "\"source\": \"mains\"")
            .replace("\"dailyVolume\": \"55 gal\"", "\"dailyVolume\": \"160 gal\"")
            .replace("\"5000 Btu/h\"", "\"2500 Btu/h\"");
    private static final Plan PLAN = Samples.plan(TEXT);

    @Test
    void aDayThatRepeatsItselfIsCountedAsIfItHadBeenRun() {
        Use.HotWater entry = PLAN.use().flatMap(Use::hotWater).orElseThrow();
        HotWaterHouse house =
                HotWaterHouse.of(PLAN, entry, DailyNeed.of(PLAN, entry)).orElseThrow();
        YearRun run = YearRun.of(house, Arrangement.SERIES, 1);
        StorageTank tank =
                new StorageTank(house.storage(Arrangement.SERIES).orElseThrow(), StorageHeater.NODES, house.k() / 60);
        Chain chain = new Chain(tank, house.onDemand(Arrangement.SERIES).orElseThrow(), house.mixF(), house.k());
        ChainDay days = new ChainDay(chain, tank, 1);
        DrawDay draws = DrawDay.of(house.draws().ofTheYear());
        double year = 0;
        for (int m = -1; m < 12; m++) {
            double gas = 0;
            double electric = 0;
            int month = Math.floorMod(m, 12);
            for (int d = 0; d < (m < 0 ? 5 : Months.days(month)); d++) {
                DayTally tally = new DayTally(house.k(), house.comfortF());
                tally.begin(tank, house.cold().get(month));
                days.run(draws, house.cold().get(month), house.storage().room().get(month), tally);
                tally.end(tank);
                gas += tally.gasBtu();
                electric += tally.electricBtu();
            }
            if (m >= 0) {
                assertThat(run.months().get(m).gasBtu())
                        .as("month " + m)
                        .isCloseTo(gas, Percentage.withPercentage(1e-6));
                assertThat(run.months().get(m).electricBtu()).isCloseTo(electric, Percentage.withPercentage(1e-6));
                year += gas;
            }
        }
        assertThat(run.gasBtu()).isPositive().isCloseTo(year, Percentage.withPercentage(1e-6));
    }

    @Test
    void aYearNamesTheFiguresItIsMadeFrom() {
        HotWaterStudy study = HotWaterStudy.of(PLAN).orElseThrow();
        List<String> burner = List.of("efficiency of the on-demand heater", "heat into the water at full fire");
        assertThat(study.year(Arrangement.SERIES).gasBtu().from())
                .extracting(Figure::name)
                .contains("storage volume", "hot water a day")
                .containsAll(burner);
        assertThat(study.year(Arrangement.ON_DEMAND_ONLY).gasBtu().from())
                .extracting(Figure::name)
                .containsAll(burner)
                .doesNotContain("storage volume");
        assertThat(study.year(Arrangement.STORAGE_ONLY).gasBtu().from())
                .extracting(Figure::name)
                .contains("storage volume")
                .doesNotContainAnyElementsOf(burner);
        assertThat(study.year(Arrangement.STORAGE_ONLY).gasBtu().how())
                .isEqualTo("heat pump and element burn no propane");
        assertThat(study.year(Arrangement.SERIES).gasBtu().how()).endsWith("needed heat / efficiency");
    }

    @Test
    void withoutAnEfficiencyStorageAloneIsStillTold() {
        HotWaterStudy study = HotWaterStudy.of(
                        Samples.plan(Samples.text("sample-plan.json").replace("\"efficiency\": \"93 %\", ", "")))
                .orElseThrow();
        assertThat(study.year(Arrangement.STORAGE_ONLY).drawMinutes()).isPresent();
        for (Arrangement a : List.of(Arrangement.SERIES, Arrangement.ON_DEMAND_ONLY)) {
            assertThat(study.year(a).gasBtu().missing())
                    .extracting(Missing::field)
                    .containsExactly("/use/hotWater/onDemand/efficiency");
        }
    }
}
