package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.plan.PlannedHouse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** Each entry the sizing asks for is asked once, at its own field. */
    @ParameterizedTest
    @CsvSource({
        "/regulators/0/outlet, /regulators/0/outlet",
        "/regulators/0/allowedDrop, /regulators/0/allowedDrop",
        "/regulators/0/fedBy, /regulators/0/fedBy",
        "/sections/0/from, /sections /sections/0/from",
        "/sections/0/material, /sections/0/material",
        "/sections/0/legs, /sections/0/legs",
        "/appliances/0/input, /appliances/0/input",
        "/appliances/0/fedBy, /sections/0/reserve /appliances/0/fedBy"
    })
    void anEntryThePipesLackIsAskedAboutAtItsField(String gone, String fields) {
        assertThat(asked(house().without(gone))).containsExactly(fields.split(" "));
    }

    @Test
    void aPipeOfNoLengthIsAskedAboutLikeOneNotMeasured() {
        assertThat(asked(house().set("/sections/0/legs", "['up 0 ft']"))).containsExactly("/sections/0/legs");
    }

    @Test
    void onlyAnEndThatFeedsNothingIsAskedForItsReserve() {
        assertThat(asked(house().section("B", "R", "steel", "east 5 ft", "'capped':true")))
                .containsExactly("/sections/1/reserve");
        assertThat(asked(house().section("B", "R", "steel", "east 5 ft", "'reserve':'20 kBtu/h'")))
                .isEmpty();
        assertThat(asked(house().section("B", "R", "steel", "east 5 ft", "'reserve':'none'")))
                .isEmpty();
    }

    @Test
    void pipesNobodyHasSeenAreAskedAboutTogether() {
        PlannedHouse house = house().set("/sections/0/assumed", "true");
        assertThat(MissingEntries.of(Piping.of(house.plan()))).singleElement().satisfies(f -> {
            assertThat(f.field()).isEqualTo("/sections/0/assumed");
            assertThat(f.found()).startsWith("Section A is assumed, not seen: what is entered of it is taken");
            assertThat(f.remedy()).endsWith("mark it as seen.");
        });
        house.section("B", "R", "steel", "east 5 ft", "'reserve':'none','assumed':true");
        assertThat(MissingEntries.of(Piping.of(house.plan()))).singleElement().satisfies(f -> {
            assertThat(f.field()).isEqualTo("/sections/0/assumed");
            assertThat(f.found())
                    .startsWith("Sections A and B are assumed, not seen: what is entered of them is taken");
            assertThat(f.remedy()).endsWith("mark each as seen.");
        });
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
