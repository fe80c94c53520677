package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.Samples;
import longrun.hotwater.HotWaterStudy;
import longrun.plan.Plan;
import longrun.plan.choice.Arrangement;
import org.junit.jupiter.api.Test;

/** What the storage heater saves, by the sums of a bill. */
class StorageSavingTest {

    static final String DEMO = Samples.text("data/demo/orchard-house.json");

    /** What an arrangement saves in a house. */
    static StorageSaving saving(String text, Arrangement a) {
        Plan plan = Samples.plan(text);
        return StorageSaving.of(plan, HotWaterStudy.of(plan).orElseThrow()).stream()
                .filter(s -> s.arrangement() == a)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void gallonsSavedAreThoseOfOnDemandAloneLessThoseOfSeries() {
        StorageSaving series = saving(DEMO, Arrangement.SERIES);
        StorageSaving alone = saving(DEMO, Arrangement.ON_DEMAND_ONLY);
        assertThat(series.savedGal().number())
                .isCloseTo(alone.gal().number() - series.gal().number(), within(1e-9));
        assertThat(alone.savedGal().number()).isZero();
        assertThat(alone.kwh().number()).isZero();
        assertThat(alone.savedMoney().number()).isZero();
    }

    @Test
    void moneyAndCarbonFollowFromGallonsAndKilowattHours() {
        StorageSaving s = saving(DEMO, Arrangement.SERIES);
        assertThat(s.savedMoney().number())
                .isCloseTo(s.savedGal().number() * 2.85 - s.kwh().number() * 0.14, within(1e-9));
        assertThat(s.savedMoneyAfter().number())
                .isCloseTo(s.savedMoney().number() - s.roomGal().number() * 2.85, within(1e-9));
        assertThat(s.cost().number())
                .isCloseTo(s.gal().number() * 2.85 + s.kwh().number() * 0.14, within(1e-9));
        assertThat(s.savedCo2Lb().number())
                .isCloseTo(s.savedGal().number() * 12.70 - s.kwh().number() * 0.86, within(1e-6));
        assertThat(s.savedGalAfter().number())
                .isCloseTo(s.savedGal().number() - s.roomGal().number(), within(1e-9));
    }

    @Test
    void theRoomTakesBackWhatTheYearCountsForHeating() {
        assertThat(saving(DEMO, Arrangement.SERIES).roomGal().number())
                .isCloseTo(FuelYear.of(Samples.plan(DEMO)).roomHeatGal().number(), within(1e-9))
                .isPositive();
        String ducted = DEMO.replace("\"room\": \"heated\"", "\"room\": \"ducted\", \"roomTemp\": \"68 degF\"");
        assertThat(saving(ducted, Arrangement.SERIES).roomGal().number()).isZero();
    }

    @Test
    void dearCurrentDoesNotPayAndSaysSo() {
        assertThat(saving(DEMO.replace("0.14", "0.45"), Arrangement.SERIES).pays())
                .hasValue(false);
        assertThat(saving(DEMO.replace("0.14", "0.05"), Arrangement.SERIES).pays())
                .hasValue(true);
    }

    @Test
    void withoutAPriceGallonsStandAndMoneyIsAsked() {
        StorageSaving s = saving(DEMO.replace(", \"pricePerKwh\": 0.14", ""), Arrangement.SERIES);
        assertThat(s.savedGal().isKnown()).isTrue();
        assertThat(s.pays()).isEmpty();
        assertThat(s.savedMoney().missing()).anyMatch(m -> m.field().equals("/use/pricePerKwh"));
    }

    @Test
    void aRoomWhoseHeaterIsNotEnteredLeavesTheTruthOpen() {
        String text = DEMO.replaceFirst("\"heating\": \\{[^}]*\\},", "");
        StorageSaving s = saving(text, Arrangement.SERIES);
        assertThat(s.savedGal().isKnown()).isTrue();
        assertThat(s.savedGalAfter().isKnown()).isFalse();
        assertThat(s.savedGalAfter().missing()).anyMatch(m -> m.field().equals("/use/heating"));
    }

    @Test
    void everyArrangementIsTold() {
        Plan plan = Samples.plan(DEMO);
        assertThat(StorageSaving.of(plan, HotWaterStudy.of(plan).orElseThrow()).stream()
                        .map(StorageSaving::arrangement))
                .containsExactlyElementsOf(List.of(Arrangement.values()));
    }
}
