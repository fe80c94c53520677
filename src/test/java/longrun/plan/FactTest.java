package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Arrangement;
import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.Tube;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is known of an entry, and the choices an entry may have. */
class FactTest {

    private static final Fact<Integer> KNOWN = Fact.known(7, "seven");
    private static final Fact<Integer> NONE = Fact.none();
    private static final Fact<Integer> UNKNOWN = Fact.unknown();

    @Test
    void knownNoneAndUnknownAreThreeDifferentThings() {
        assertThat(KNOWN.isKnown()).isTrue();
        assertThat(KNOWN.isNone()).isFalse();
        assertThat(KNOWN.isUnknown()).isFalse();
        assertThat(NONE.isKnown()).isFalse();
        assertThat(NONE.isNone()).isTrue();
        assertThat(NONE.isUnknown()).isFalse();
        assertThat(UNKNOWN.isKnown()).isFalse();
        assertThat(UNKNOWN.isNone()).isFalse();
        assertThat(UNKNOWN.isUnknown()).isTrue();
        assertThat(KNOWN.<String>fold(v -> "k" + v, () -> "n", () -> "u")).isEqualTo("k7");
        assertThat(NONE.<String>fold(v -> "k" + v, () -> "n", () -> "u")).isEqualTo("n");
        assertThat(UNKNOWN.<String>fold(v -> "k" + v, () -> "n", () -> "u")).isEqualTo("u");
    }

    @Test
    void theTextIsAsTyped() {
        assertThat(KNOWN.findText()).contains("seven");
        assertThat(Fact.known(7).findText()).contains("7");
        assertThat(NONE.findText()).contains("none");
        assertThat(UNKNOWN.findText()).isEmpty();
        assertThat(KNOWN.findValue()).contains(7);
        assertThat(NONE.findValue()).isEmpty();
    }

    @Test
    void unknownIsNeverTakenForAValue() {
        assertThat(KNOWN.is(7)).isTrue();
        assertThat(KNOWN.is(8)).isFalse();
        assertThat(NONE.is(7)).isFalse();
        assertThat(UNKNOWN.is(7)).isFalse();
        assertThat(KNOWN.is(v -> v > 6)).isTrue();
        assertThat(KNOWN.is(v -> v > 7)).isFalse();
        assertThat(UNKNOWN.is(v -> true)).isFalse();
        assertThat(NONE.is(v -> true)).isFalse();
    }

    @Test
    void aChoiceIsWrittenSmallWithHyphens() {
        assertThat(ApplianceKind.ON_DEMAND_WATER_HEATER.written()).isEqualTo("on-demand-water-heater");
        assertThat(Tube.ACR.written()).isEqualTo("ACR");
        assertThat(Named.find(Material.class, "pe-pipe")).contains(Material.PE_PIPE);
        assertThat(Named.find(Material.class, "PE_PIPE")).isEmpty();
    }

    @Test
    void choicesHaveTheTradesNames() {
        assertThat(CodeProfile.FUEL_GAS_2018.label()).isEqualTo("fuel gas code, 2018");
        assertThat(Material.CSST.label()).isEqualTo("CSST");
        assertThat(Material.PE_TUBING.label()).isEqualTo("polyethylene tubing");
        assertThat(RegulatorKind.INTEGRAL_TWO_STAGE.label()).isEqualTo("integral two-stage regulator");
        assertThat(ApplianceKind.CLOTHES_DRYER.label()).isEqualTo("clothes dryer");
        assertThat(Arrangement.SERIES.label()).isEqualTo("in series");
    }

    /** Steel turns by fittings alone; of polyethylene are pipe and tubing. */
    @ParameterizedTest
    @CsvSource({
        "STEEL, false, false",
        "COPPER, true, false",
        "CSST, true, false",
        "PE_PIPE, true, true",
        "PE_TUBING, true, true"
    })
    void whatBendsAndWhatIsPlastic(Material material, boolean bends, boolean plastic) {
        assertThat(material.bends()).isEqualTo(bends);
        assertThat(material.isPlastic()).isEqualTo(plastic);
    }

    @ParameterizedTest
    @CsvSource({"NORTH, SOUTH", "EAST, WEST", "UP, DOWN"})
    void eachDirectionHasItsOpposite(Direction one, Direction other) {
        assertThat(one.opposite()).isEqualTo(other);
        assertThat(other.opposite()).isEqualTo(one);
    }

    /** Fuel gas code 501.8, memory: these may stand without a vent of their own. */
    @ParameterizedTest
    @EnumSource(ApplianceKind.class)
    void rangesDryersLightsAndRefrigeratorsAsARuleHaveNoVent(ApplianceKind kind) {
        boolean without = switch (kind) {
            case RANGE, COOKTOP, OVEN, CLOTHES_DRYER, REFRIGERATOR, LIGHT, OUTDOOR_GRILL -> true;
            default -> false;
        };
        assertThat(kind.isUsuallyVented()).isEqualTo(!without);
    }

    @Test
    void whatIsAssumedAndWhatIsNotSeenIsTold() {
        Plan plan = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "20 ft", "'assumed':true")
                .section("B", "R", "steel", "20 ft", "'assumed':false")
                .section("C", "R", "steel", "20 ft")
                .appliance("a", "A", "60000 Btu/h", "'connection':[{'part':'shutoff'},{'part':'shutoff','seen':false}]")
                .appliance("b", "B", "60000 Btu/h", "'connection':[{'part':'shutoff'},{'part':'shutoff','seen':true}]")
                .appliance("c", "C", "60000 Btu/h", "'connection':[{'part':'shutoff','seen':'none'}]")
                .plan();
        assertThat(plan.sections()).extracting(Section::isAssumed).containsExactly(true, false, false);
        assertThat(plan.appliances()).extracting(Appliance::hasPartsNotSeen).containsExactly(true, false, true);
    }

    @Test
    void aTankStandsUnderEitherOfItsTwoNames() {
        Plan one = PlannedHouse.empty().set("/tank", "{'count':2}").plan();
        Plan other = PlannedHouse.empty().set("/tanks", "{'count':3}").plan();
        assertThat(one.allTanks()).isEqualTo(one.tank()).hasSize(1);
        assertThat(other.allTanks()).isEqualTo(other.tanks()).hasSize(1);
    }

    @Test
    void ofTwoAppliancesCalledAlikeEachIsSaidToBe() {
        Plan plan = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .add("appliances", "'id':'up','kind':'range'")
                .add("appliances", "'id':'down','kind':'range'")
                .add("appliances", "'id':'hall','name':'Stove'")
                .plan();
        ApplianceNames names = ApplianceNames.of(plan);
        assertThat(plan.appliances()).extracting(names::isAlike).containsExactly(true, true, false);
        assertThat(ApplianceNames.Identity.of(plan.appliances().get(2)).isNamed())
                .isTrue();
        assertThat(ApplianceNames.Identity.of(plan.appliances().get(0)).isNamed())
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "/sections/2/legs, sections, 3",
        "/sections/2/legs/0, sections, 4",
        "/appliances/0/connection/1/size, connection, 5",
        "/site/coldWater/temp, coldWater, 3",
        "/site/people, site, 2",
        "/site, '', 1",
        "'', '', 0"
    })
    void anEntryIsHeldByAnother(String pointer, String holder, int length) {
        PlanPath path = PlanPath.of(pointer);
        assertThat(path.holder()).isEqualTo(holder);
        assertThat(path.length()).isEqualTo(length);
        assertThat(path.step(length)).isEmpty();
        assertThat(path.findIndex(length)).isEmpty();
    }

    @Test
    void theFirstStepIsTheEntryEvenIfItIsANumber() {
        assertThat(PlanPath.of("/3").entry()).isEqualTo("3");
        assertThat(PlanPath.of("/3/4").entry()).isEqualTo("3");
    }

    @ParameterizedTest
    @CsvSource({
        "0, true",
        "9, true",
        "999999, true",
        "1000000, false",
        "'', false",
        "1a, false",
        "a, false",
        "/, false",
        ":, false"
    })
    void anIndexIsANumberOfUpToSixDigits(String step, boolean index) {
        assertThat(PlanPath.isIndex(step)).isEqualTo(index);
    }
}
