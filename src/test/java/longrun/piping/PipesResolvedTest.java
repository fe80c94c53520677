package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import longrun.Samples;
import longrun.plan.Appliance;
import longrun.plan.PlannedHouse;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.PartKind;
import longrun.quantity.HeatRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What hangs on what, where the plan lists its parts against the flow: the second-stage regulator first, the yard pipe
 * it hangs on first among the sections. Loads are sums of full inputs (2018 IFGC 402.2).
 */
class PipesResolvedTest {

    /** Tank, first stage, yard pipe Y, second stage; A parts into B to a grill, C to a heater and a capped end D. */
    private static PlannedHouse house(String... more) {
        return PlannedHouse.empty()
                .with(more)
                .regulator("second", "second-stage", "Y", "11 in w.c.", "0.5 in w.c.")
                .regulator("first", "first-stage", "tank", "10 psi", "1 psi")
                .section("Y", "first", "pe-pipe", "north 50 ft")
                .section("A", "second", "steel", "north 10 ft")
                .section("B", "A", "steel", "north 8 ft")
                .section("C", "A", "steel", "east 12 ft")
                .section("D", "A", "steel", "west 6 ft", "'capped':true,'reserve':'25 kBtu/h'")
                .appliance("grill", "B", "60 kBtu/h", "'kind':'outdoor-grill'")
                .appliance("heater", "C", "40 kBtu/h");
    }

    private static Network network(PlannedHouse house) {
        return Piping.of(house.plan()).network();
    }

    @Test
    void aPipeIsFoundByItsIdAndARegulatorByItsOwn() {
        Network network = network(house());
        assertThat(network.findSection("C").map(Section::id)).contains("C");
        assertThat(network.findSection("first")).isEmpty();
        assertThat(network.findRegulator("first").map(Regulator::id)).contains("first");
        assertThat(network.findRegulator("C")).isEmpty();
    }

    @Test
    void theRegulatorAheadIsTheOneWhosePipeLeadsThere() {
        Network network = network(house());
        assertThat(network.findRegulatorAhead("D").map(Regulator::id)).contains("second");
        assertThat(network.findRegulatorAhead("second").map(Regulator::id)).contains("first");
        assertThat(network.findRegulatorAhead("first")).isEmpty();
        assertThat(network.findRegulatorAhead("nowhere")).isEmpty();
        PlannedHouse withTheFlow = PlannedHouse.empty()
                .regulator("first", "first-stage", "tank", "10 psi", "1 psi")
                .regulator("second", "second-stage", "Y", "11 in w.c.", "0.5 in w.c.")
                .section("Y", "first", "pe-pipe", "north 50 ft");
        assertThat(network(withTheFlow).findRegulatorAhead("second").map(Regulator::id))
                .contains("first");
        assertThat(Piping.of(house().plan()).stageFeeding(0)).isEqualTo(1);
        assertThat(Piping.of(house().plan()).stageFeeding(1)).isEqualTo(-1);
    }

    @Test
    void aRegulatorsPipesAreThoseThatLeaveItDirectly() {
        Network network = network(house());
        assertThat(network.listLeaving("second")).extracting(Section::id).containsExactly("A");
        assertThat(network.listLeaving("A")).isEmpty();
    }

    @Test
    void atAPipesEndHangsItsApplianceOrItsRegulator() {
        Network network = network(house());
        assertThat(network.listFedBy("B")).extracting(Appliance::id).containsExactly("grill");
        assertThat(network.listFedBy("A")).isEmpty();
        assertThat(network.findRegulatorAtEndOf("Y").map(Regulator::id)).contains("second");
        assertThat(network.findRegulatorAtEndOf("B")).isEmpty();
        assertThat(network.findRegulatorAtEndOf("nowhere")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Y, false", "A, false", "B, false", "C, false", "D, true", "nowhere, false"})
    void onlyAnEndWithNothingOnItFeedsNothing(String section, boolean nothing) {
        assertThat(network(house()).feedsNothing(section)).isEqualTo(nothing);
    }

    @ParameterizedTest
    @CsvSource({"Y, REGULATOR second 0", "A, none", "B, APPLIANCE grill 0", "C, APPLIANCE heater 1", "D, CAPPED D 4"})
    void aRunEndsAtAnApplianceARegulatorOrACap(String section, String end) {
        Piping piping = Piping.of(house().plan());
        int index = piping.findSection(section).orElseThrow();
        assertThat(piping.findOutlet(index)
                        .map(o -> o.kind() + " " + o.id() + " " + o.item())
                        .orElse("none"))
                .isEqualTo(end);
    }

    @Test
    void anEndThatNobodySaysIsCappedIsOpen() {
        Piping piping = Piping.of(house().section("E", "A", "steel", "up 2 ft").plan());
        assertThat(piping.findOutlet(5).orElseThrow().kind()).isEqualTo(Outlet.Kind.OPEN);
    }

    @ParameterizedTest
    @CsvSource({"Y, 125000, 2", "A, 125000, 2", "B, 60000, 1", "D, 25000, 0", "first, 125000, 2", "second, 125000, 2"})
    void aPipeCarriesAllThatHangsBehindItAlsoBehindItsRegulator(String id, double btuh, int appliances) {
        Piping piping = Piping.of(house().plan());
        Served served = piping.network().servedBy(id);
        assertThat(served.known().btuh()).isEqualTo(btuh);
        assertThat(served.appliances()).isEqualTo(appliances);
        assertThat(served.missing()).isEmpty();
        piping.findSection(id)
                .ifPresent(s ->
                        assertThat(piping.load(s).whole().orElseThrow().btuh()).isEqualTo(btuh));
    }

    /** NFPA 54 1.1.1.1(A): the point of delivery is the outlet of the last regulator that is no line regulator. */
    @Test
    void theYardPipeIsOnTheTankSideAndTheHousesPipeBehindThePointOfDelivery() {
        Network network = network(house());
        assertThat(network.sideOf("Y")).isEqualTo(Side.TANK_SIDE);
        assertThat(network.sideOf("first")).isEqualTo(Side.TANK_SIDE);
        assertThat(network.sideOf("D")).isEqualTo(Side.HOUSE_SIDE);
        assertThat(network.sideOf("second")).isEqualTo(Side.HOUSE_SIDE);
        assertThat(network.sideOf("nowhere")).isEqualTo(Side.UNKNOWN);
        assertThat(Piping.of(house().plan()).stages()).extracting(Stage::id).containsExactly("second", "first");
    }

    @Test
    void onlyGrillsHangWhereNothingElseDoes() {
        Network network = network(house());
        assertThat(network.servedBy("B").onlyGrills()).isTrue();
        assertThat(network.servedBy("C").onlyGrills()).isFalse();
        assertThat(network.servedBy("A").onlyGrills()).isFalse();
        PlannedHouse two = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft")
                .section("B", "A", "steel", "east 5 ft")
                .section("C", "A", "steel", "west 5 ft", "'capped':true,'reserve':'none'")
                .appliance("grill", "B", "60 kBtu/h", "'kind':'outdoor-grill'");
        assertThat(network(two).servedBy("A"))
                .isEqualTo(new Served(HeatRate.ofBtuh(60_000), Optional.empty(), 1, true));
        assertThat(network(two.section("D", "A", "steel", "up 5 ft").appliance("range", "D", "65 kBtu/h"))
                        .servedBy("A")
                        .onlyGrills())
                .isFalse();
    }

    @Test
    void whicheverPipeComesFirstOneHeaterAmongGrillsIsNoGrill() {
        Served grill = new Served(HeatRate.ofBtuh(60_000), Optional.empty(), 1, true);
        Served heater = new Served(HeatRate.ofBtuh(40_000), Optional.of("/appliances/1/input"), 1, false);
        assertThat(grill.plus(grill).onlyGrills()).isTrue();
        assertThat(grill.plus(heater).onlyGrills()).isFalse();
        assertThat(heater.plus(grill).onlyGrills()).isFalse();
        assertThat(heater.plus(heater).onlyGrills()).isFalse();
        assertThat(heater.plus(grill).missing())
                .isEqualTo(grill.plus(heater).missing())
                .contains("/appliances/1/input");
        assertThat(heater.plus(Served.unknown("/sections/4/reserve")).missing()).contains("/appliances/1/input");
    }

    /** Missing is never zero: the first entry that lacks is named, and the sum is not whole. */
    @Test
    void anInputNotEnteredLeavesEveryPipeBeforeItOpen() {
        PlannedHouse lacking = house().lastWithout("appliances", "input");
        assertThat(network(lacking).servedBy("Y").missing()).contains("/appliances/1/input");
        assertThat(network(lacking).servedBy("Y").known().btuh()).isEqualTo(85_000);
        assertThat(network(lacking).servedBy("B").missing()).isEmpty();
        Piping piping = Piping.of(lacking.plan());
        assertThat(piping.load(0).whole()).isEmpty();
        assertThat(piping.load(2).whole()).isPresent();
        assertThat(piping.isComplete(0)).isFalse();
    }

    @Test
    void anApplianceThatHangsNowhereMayComeUponAnyRegulator() {
        PlannedHouse loose = house().lastWithout("appliances", "fedBy");
        assertThat(network(loose).servedBy("second").missing()).contains("/appliances/1/fedBy");
        Piping piping = Piping.of(loose.plan());
        assertThat(piping.findLoose(0)).contains("/appliances/1/fedBy");
        assertThat(piping.hangsLoose()).isTrue();
        assertThat(Piping.of(house().plan()).hangsLoose()).isFalse();
        assertThat(Piping.of(house().plan()).findLoose(0)).isEmpty();
    }

    @Test
    void aPipeThatLeavesNothingIsInNoStage() {
        Piping piping = Piping.of(house().lastWithout("sections", "from").plan());
        assertThat(piping.findStage(4)).isEmpty();
        assertThat(piping.stageIndex(4)).isEqualTo(-1);
        assertThat(piping.findStage(3).map(Stage::id)).contains("second");
        assertThat(piping.network().servedBy("first").missing()).contains("/sections/4/from");
        assertThat(piping.network().sideOf("D")).isEqualTo(Side.UNKNOWN);
    }

    /** A regulator that hangs loose may come upon every stage but those it feeds. */
    @Test
    void aLooseRegulatorLeavesOpenWhatItDoesNotFeed() {
        PlannedHouse loose =
                house().regulator("third", "two-psi", "tank", "2 psi", "1 psi").lastWithout("regulators", "fedBy");
        Piping piping = Piping.of(loose.plan());
        assertThat(piping.findLoose(0)).contains("/regulators/2/fedBy");
        assertThat(piping.findLoose(1)).contains("/regulators/2/fedBy");
        assertThat(piping.findLoose(2)).isEmpty();
        assertThat(piping.hangsLoose()).isTrue();
        Piping own = Piping.of(house().without("/regulators/1/fedBy").plan());
        assertThat(own.findLoose(0)).isEmpty();
        assertThat(own.findLoose(1)).isEmpty();
        assertThat(own.hangsLoose()).isFalse();
        Piping withTheFlow = Piping.of(PlannedHouse.empty()
                .regulator("first", "first-stage", "tank", "10 psi", "1 psi")
                .lastWithout("regulators", "fedBy")
                .regulator("second", "second-stage", "Y", "11 in w.c.", "0.5 in w.c.")
                .section("Y", "first", "pe-pipe", "north 50 ft")
                .section("A", "second", "steel", "north 10 ft")
                .plan());
        assertThat(withTheFlow.findLoose(1)).isEmpty();
        assertThat(withTheFlow.hangsLoose()).isFalse();
    }

    @Test
    void theFirstPipeOfAStageThatNobodyHasSeenStandsForIt() {
        PlannedHouse house = house();
        assertThat(Piping.of(house.plan()).findAssumed(0)).isEmpty();
        assertThat(Piping.of(house.plan()).findAssumed(1)).isEmpty();
        house.set("/sections/2/assumed", "true").set("/sections/3/assumed", "true");
        assertThat(Piping.of(house.plan()).findAssumed(0)).hasValue(2);
        assertThat(Piping.of(house.plan()).isComplete(0)).isFalse();
        house.set("/sections/0/assumed", "true");
        assertThat(Piping.of(house.plan()).findAssumed(1)).hasValue(0);
        PlannedHouse one = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft", "'assumed':true")
                .section("B", "A", "steel", "north 5 ft", "'assumed':true");
        assertThat(Piping.of(one.plan()).findAssumed(0)).hasValue(0);
    }

    /** 2018 IFGC 402.2: the connected load, unless a smaller one is approved; so a share counts with its reason alone. */
    @ParameterizedTest
    @CsvSource({"'', 125000", "reason, 100000", "blank, 125000"})
    void aShareCountsOnlyWithItsReason(String reason, double btuh) {
        String entry = reason.isEmpty() ? "" : ",'reason':'" + (reason.equals("blank") ? " " : "approved") + "'";
        Piping piping =
                Piping.of(house("'diversity':{'share':'80 %'" + entry + "}").plan());
        assertThat(piping.load(0).known().btuh()).isEqualTo(btuh);
        assertThat(piping.connected(0).known().btuh()).isEqualTo(125_000);
    }

    @ParameterizedTest
    @CsvSource({"2, RUN", "3, BRANCH", "4, BRANCH", "0, NO_TEE", "1, NO_TEE"})
    void onePipeGoesStraightOnThroughACrossAndTheOthersTurn(int section, Turns.Tee tee) {
        assertThat(Piping.of(house().plan()).turns(section).tee()).isEqualTo(tee);
    }

    @Test
    void ofTwoPipesThatClaimToGoStraightOnBothTakeTheBranch() {
        Piping piping =
                Piping.of(house().section("E", "A", "steel", "north 3 ft").plan());
        assertThat(piping.turns(2).tee()).isEqualTo(Turns.Tee.BRANCH);
        assertThat(piping.turns(5).tee()).isEqualTo(Turns.Tee.BRANCH);
    }

    @Test
    void listedFittingsAreCountedWhicheverTheyAre() {
        Turns turns = Piping.of(house().section(
                                "E",
                                "A",
                                "steel",
                                "up 2 ft",
                                "'fittings':{'elbow-90':4,'valve':1,'elbow-45':3,'tee-branch':2}")
                        .plan())
                .turns(5);
        assertThat(turns.elbows90()).isEqualTo(5);
        assertThat(turns.listedParts()).isEqualTo(10);
    }

    /** A part that is not named may be the one that holds back most: a trap, beside the trap that is named. */
    @Test
    void aPartThatIsNotNamedCountsAsATrap() {
        Turns turns = Piping.of(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                        .section("A", "R", "steel", "north 20 ft")
                        .appliance(
                                "heater",
                                "A",
                                "40 kBtu/h",
                                "'connection':[{'part':'shutoff'},{'part':'sediment-trap'},{'distance':'2 ft'}]")
                        .plan())
                .turns(0);
        assertThat(turns.traps()).isEqualTo(2);
        assertThat(turns.shutoffs()).isEqualTo(1);
        assertThat(turns.assumed()).isEqualTo(List.of(PartKind.SEDIMENT_TRAP));
    }

    @Test
    void aPlanWithoutPipesHasNoStage() {
        Piping piping = Piping.of(Samples.plan("{\"format\":\"longrun-plan/1\"}"));
        assertThat(piping.stages()).isEmpty();
        assertThat(piping.sectionCount()).isZero();
        assertThat(piping.hangsLoose()).isFalse();
    }
}
