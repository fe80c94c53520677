package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;

/** A share of the load stands only with its reason; what hangs where is found by its name. */
class MissingEntriesTest {

    private static PlannedHouse house(String... more) {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with(more)
                .section("A", "R", "steel", "north 20 ft")
                .appliance("heater", "A", "40 kBtu/h", "'connection':'none'");
    }

    private static List<String> asked(PlannedHouse house) {
        return MissingEntries.of(Piping.of(house.plan())).stream()
                .map(Finding::field)
                .toList();
    }

    /** 2018 IFGC 402.2: the whole connected load, unless a share is approved; so it is entered with its reason. */
    @Test
    void aShareOfTheLoadWithoutAReasonIsAskedAbout() {
        assertThat(asked(house())).isEmpty();
        assertThat(asked(house("'diversity':{'share':'80 %'}"))).containsExactly("/diversity/reason");
        assertThat(asked(house("'diversity':{'share':'80 %','reason':'  '}"))).containsExactly("/diversity/reason");
        assertThat(asked(house("'diversity':{'share':'80 %','reason':'agreed with the inspector'}")))
                .isEmpty();
        assertThat(asked(house("'diversity':{'reason':'agreed with the inspector'}")))
                .isEmpty();
    }

    @Test
    void everythingOnThePipeIsFoundByItsName() {
        Network network = Piping.of(house().plan()).network();
        assertThat(network.findPointer("heater")).contains("/appliances/0");
        assertThat(network.findPointer("A")).contains("/sections/0");
        assertThat(network.findPointer("R")).contains("/regulators/0");
        assertThat(network.findPointer("B")).isEmpty();
        assertThat(network.servedBy("A").known().btuh()).isEqualTo(40_000);
        assertThat(network.servedBy("R").known().btuh()).isEqualTo(40_000);
    }

    /** 2018 IFGC 409.5 and 408.4: a shutoff and a trap will be asked for once somebody looks. */
    @Test
    void partsNotSeenAreNoFewerThanTheRulesAskFor() {
        assertThat(endOf("'connection':[{'part':'union','seen':false}]")).isEqualTo("1 shutoffs, 1 traps, 2 assumed");
        assertThat(endOf("'connection':[{'part':'union','seen':false},{'part':'shutoff','seen':true}]"))
                .isEqualTo("1 shutoffs, 1 traps, 1 assumed");
        assertThat(endOf("'connection':[{'part':'shutoff','seen':false},{'part':'built-in-trap','seen':true}]"))
                .isEqualTo("1 shutoffs, 0 traps, 1 assumed");
        assertThat(endOf("'connection':[{'part':'shutoff','seen':false},{'part':'built-in-trap','seen':false}]"))
                .isEqualTo("1 shutoffs, 1 traps, 2 assumed");
        assertThat(endOf("'connection':[{'part':'sediment-trap','seen':false},{'part':'shutoff','seen':true}]"))
                .isEqualTo("1 shutoffs, 1 traps, 1 assumed");
    }

    private static String endOf(String connection) {
        Piping piping = Piping.of(PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft")
                .appliance("heater", "A", "40 kBtu/h", "'kind':'storage-water-heater'", connection)
                .plan());
        Turns t = piping.turns(0);
        return t.shutoffs() + " shutoffs, " + t.traps() + " traps, "
                + t.assumed().size() + " assumed";
    }
}
