package longrun.hotwater;

import static longrun.hotwater.TwoHeaters.PUMP;
import static longrun.hotwater.TwoHeaters.TANK;
import static longrun.hotwater.TwoHeaters.entry;
import static longrun.hotwater.TwoHeaters.house;
import static longrun.hotwater.TwoHeaters.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.hotwater.heater.OnDemandHeater;
import longrun.hotwater.heater.StorageHeater;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Plan;
import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heaters as they are entered: which numbers they come to, what stands in, and what is missing and named. */
class HeaterEntriesTest {

    private static final String SECOND = "'id':'second','input':'99000 Btu/h','kind':'on-demand-water-heater'";
    private static final String ONE = ",'roomTemp':'60 degF'";

    private static StorageEntries storage(String entries) {
        Plan plan = plan("'storage':{" + entries + "}");
        return StorageEntries.of(plan, entry(plan));
    }

    private static OnDemandEntries onDemand(PlannedHouse house) {
        Plan plan = house.plan();
        return OnDemandEntries.of(plan, entry(plan), DailyNeed.of(plan, entry(plan)));
    }

    private static List<String> fields(List<Missing> missing) {
        return missing.stream().map(Missing::field).toList();
    }

    @Test
    void aHeatPumpTankIsAsItWasEntered() {
        StorageEntries s = storage(TANK + PUMP
                + ",'element':'4.5 kW','lockoutTemp':'40 degF','heatPumpMaxTemp':'130 degF','room':'unheated'" + ONE);
        assertThat(s.heater()).contains(new StorageHeater(80, 140, 5000, 2.5, 0, 4, 40, 130));
        assertThat(s.missing()).isEmpty();
        assertThat(s.electricMissing()).isEmpty();
        assertThat(s.room().values()).hasSize(12).containsOnly(60.0);
        assertThat(s.from())
                .extracting(Figure::name)
                .containsExactly(
                        "storage volume",
                        "storage set point",
                        "standing loss",
                        "heat pump output",
                        "COP of the heat pump");
    }

    @ParameterizedTest
    @CsvSource({"true, 15354.6", "false, 0"})
    void anElementBesideAHeatPumpHeatsOnlyWhereItIsOn(boolean on, double btuh) {
        StorageEntries s = storage(TANK + PUMP + ",'element':'4.5 kW','elementOn':" + on + ONE);
        assertThat(s.heater().orElseThrow().elementBtuh()).isCloseTo(btuh, within(0.1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"'heatPumpOutput':'none','element':'4.5 kW'", "'element':'4.5 kW'"})
    void anElementAloneIsTheHeaterAndNeedsNoPump(String entries) {
        StorageEntries s = storage(TANK + "," + entries + ONE);
        StorageHeater h = s.heater().orElseThrow();
        assertThat(h.elementBtuh()).isCloseTo(15_354.6, within(0.1));
        assertThat(h.pumpBtuh()).isZero();
        assertThat(h.lockoutF()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(h.pumpMaxF()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(s.electricMissing()).isEmpty();
        assertThat(s.from()).hasSize(3);
    }

    @Test
    void aCopSaysThatThereIsAHeatPumpWhoseOutputIsMissing() {
        StorageEntries s = storage(TANK + ",'element':'4.5 kW','cop':2.5" + ONE);
        assertThat(s.heater()).isEmpty();
        assertThat(fields(s.missing())).containsExactly("/use/hotWater/storage/heatPumpOutput");
        assertThat(s.from()).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource({"0.9, true", "1, false", "1.1, false"})
    void noHeatPumpGivesLessHeatThanItsCurrent(double cop, boolean asked) {
        StorageEntries s = storage(TANK + ",'heatPumpOutput':'5000 Btu/h','room':'heated','cop':" + cop);
        assertThat(s.electricMissing())
                .isEqualTo(asked ? List.of(new Missing("/use/hotWater/storage/cop", "a COP of 1 or more")) : List.of());
    }

    @Test
    void currentNeedsTheCopAndWhereTheHeatIsTakenFrom() {
        StorageEntries s = storage(TANK + ",'heatPumpOutput':'5000 Btu/h'" + ONE);
        assertThat(fields(s.electricMissing()))
                .containsExactly("/use/hotWater/storage/cop", "/use/hotWater/storage/room");
        assertThat(s.heater().orElseThrow().cop()).isEqualTo(1);
        assertThat(fields(storage(TANK + PUMP + ONE).electricMissing())).containsExactly("/use/hotWater/storage/room");
    }

    @Test
    void whatTheWaterOfATankHangsOnIsNamed() {
        StorageEntries s = storage("'heatPumpOutput':'5000 Btu/h'");
        assertThat(fields(s.missing()))
                .containsExactly(
                        "/use/hotWater/storage/volume",
                        "/use/hotWater/storage/setTemp",
                        "/use/hotWater/storage/standbyLoss",
                        "/use/hotWater/storage/roomTemp");
        assertThat(fields(storage(TANK + ONE).missing())).containsExactly("/use/hotWater/storage/heatPumpOutput");
        assertThat(storage(TANK.replace("80", "0") + PUMP + ONE).missing())
                .containsExactly(new Missing("/use/hotWater/storage/volume", "a volume above 0 gal"));
        Plan plan = plan();
        StorageEntries none = StorageEntries.of(plan, entry(plan));
        assertThat(fields(none.missing())).containsExactly("/use/hotWater/storage");
        assertThat(none.room().missing()).isEqualTo(none.missing());
        assertThat(none.from()).isEmpty();
        assertThat(none.electricMissing()).isEmpty();
    }

    /** Common practice: 68 degF indoors where nothing else is entered. */
    @Test
    void theAirAboutATankIsAsEnteredElseThatOfTheHeatedHouse() {
        assertThat(storage(TANK + PUMP + ",'room':'heated'").room().values()).containsOnly(68.0);
        assertThat(storage(TANK + PUMP + ",'room':'unheated'").room().isKnown()).isFalse();
        assertThat(storage(TANK + PUMP + ",'room':'heated'" + ONE).room().values())
                .containsOnly(60.0);
        StringBuilder twelve = new StringBuilder();
        for (int m = 0; m < 12; m++) {
            twelve.append(m == 0 ? "'" : ",'").append(50 + m).append(" degF'");
        }
        assertThat(storage(TANK + PUMP + ",'roomTemp':[" + twelve + "]").room().values())
                .startsWith(50.0, 51.0)
                .endsWith(61.0);
        Plan warm = house("'storage':{" + TANK + PUMP + ",'room':'heated'}")
                .set("/use/indoorTemp", "72 degF")
                .plan();
        assertThat(StorageEntries.of(warm, entry(warm)).room().values()).containsOnly(72.0);
    }

    @Test
    void anOnDemandHeaterIsAsItWasEntered() {
        OnDemandEntries o = onDemand(house("'onDemand':{'appliance':'heater','setTemp':'125 degF','efficiency':'90"
                + " %','leastFire':'20000 Btu/h','activation':'0.6 gal/min'}"));
        assertThat(o.heater()).contains(new OnDemandHeater(125, 162_000, 18_000, 0.6, 0.9));
        assertThat(o.missing()).isEmpty();
        assertThat(o.standIns()).isEmpty();
        assertThat(o.output().how()).isEqualTo("input x efficiency");
    }

    @Test
    void looksForLeastFireAndActivationThatFoundNoneMeanNothing() {
        OnDemandEntries o = onDemand(house(
                "'onDemand':{'setTemp':'125 degF','efficiency':'90" + " %','leastFire':'none','activation':'none'}"));
        assertThat(o.heater()).contains(new OnDemandHeater(125, 162_000, 0, 0, 0.9));
        assertThat(o.standIns()).isEmpty();
    }

    /** Starting values, common practice: 120 degF, 15,000 Btu/h, 0.5 gal/min. */
    @Test
    void whatIsNotEnteredOfAnOnDemandHeaterStartsAtAUsualValueAndSaysSo() {
        OnDemandEntries o = onDemand(house("'onDemand':{'efficiency':'90 %'}"));
        assertThat(o.heater()).contains(new OnDemandHeater(120, 162_000, 13_500, 0.5, 0.9));
        assertThat(o.standIns())
                .extracting(StandIn::field)
                .containsExactly(
                        "/use/hotWater/onDemand/setTemp",
                        "/use/hotWater/onDemand/leastFire",
                        "/use/hotWater/onDemand/activation");
        assertThat(o.standIns())
                .extracting(StandIn::value)
                .satisfiesExactly(
                        v -> assertThat(v).startsWith("120 degF"),
                        v -> assertThat(v).startsWith("15,000 Btu/h"),
                        v -> assertThat(v).startsWith("0.5 gal/min"));
    }

    @ParameterizedTest
    @CsvSource({"0 %, an efficiency above 0 %", "none, 'efficiency of the on-demand heater, from its label'"})
    void withoutAnEfficiencyNoGasCanBeToldAndTheLabelIsNamed(String efficiency, String words) {
        OnDemandEntries o = onDemand(house("'onDemand':{'efficiency':'" + efficiency + "'}"));
        assertThat(o.heater()).isEmpty();
        assertThat(o.missing()).containsExactly(new Missing("/use/hotWater/onDemand/efficiency", words));
        assertThat(o.standIns()).hasSize(3);
        OnDemandEntries none = onDemand(house());
        assertThat(none.heater()).isEmpty();
        assertThat(fields(none.missing())).containsExactly("/use/hotWater/onDemand/efficiency");
    }

    @Test
    void theOnDemandHeaterIsTheOneNamedOrTheOnlyOneThereIs() {
        Plan alone = plan("'onDemand':{'efficiency':'90 %'}");
        assertThat(OnDemandEntries.appliance(alone, entry(alone))).contains(1);
        Plan other = plan("'onDemand':{'appliance':'furnace'}");
        assertThat(OnDemandEntries.appliance(other, entry(other))).contains(0);
        Plan two = house("'onDemand':{'efficiency':'90 %'}")
                .add("appliances", SECOND)
                .plan();
        assertThat(OnDemandEntries.appliance(two, entry(two))).isEmpty();
        assertThat(fields(onDemand(house("'onDemand':{'efficiency':'90 %'}").add("appliances", SECOND))
                        .output()
                        .missing()))
                .containsExactly("/use/hotWater/onDemand/appliance");
        Plan named = house("'onDemand':{'appliance':'second'}")
                .add("appliances", SECOND)
                .plan();
        assertThat(OnDemandEntries.appliance(named, entry(named))).contains(2);
    }

    /** NFPA 54 11.1.2: at 5,000 ft 80 % of the input is left by the lower reading. */
    @ParameterizedTest
    @CsvSource({"0.8, 4000 ft", "1, 5000 ft"})
    void fullFireFallsWithTheAltitudeUnlessTheLabelCoversIt(double share, String label) {
        OnDemandEntries o = onDemand(house("'onDemand':{'efficiency':'90 %'}")
                .set("/site/elevation", "5000 ft")
                .set("/appliances/1/altitudeLabel", label));
        assertThat(o.output().number()).isCloseTo(162_000 * share, within(1e-6));
        assertThat(o.output().how().contains("4 % lost for each 1,000 ft")).isEqualTo(share < 1);
    }
}
