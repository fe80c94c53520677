package longrun.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.finding.Finding;
import longrun.plan.PlannedHouse;
import longrun.plan.choice.PartKind;
import longrun.quantity.Bore;
import longrun.quantity.Length;
import org.junit.jupiter.api.Test;

/** What is said of a size that is too small, that cannot be had, or that rests on what nobody has entered. */
class SizingFindingsTest {

    private static PlannedHouse plain(String inlet, String drop) {
        return PlannedHouse.behind(inlet, drop).with("'fittingAllowance':'none'");
    }

    private static PlannedHouse steel(String legs, String input, String... more) {
        return plain("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", legs, more)
                .appliance("heater", "A", input, "'connection':'none'");
    }

    private static Finding only(PlannedHouse house, String rule) {
        List<Finding> found = SizingFindings.of(house.size()).stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /** 2018 IFGC Table 402.4(28): at 50 ft 1/2 in. carries 122,000 Btu/h and 3/4 in. 255,000. */
    @Test
    void aSizeInPlaceThatIsTooSmallIsNamedWithWhatItCarries() {
        Finding f = only(steel("50 ft", "199 kBtu/h", "'installedSize':'1/2'"), "section-undersized");
        assertThat(f.found())
                .isEqualTo("1/2 in. in place carries 122,000 Btu/h at the row of 50 ft; the load is 199,000 Btu/h");
        assertThat(f.required()).isEqualTo("3/4 in. or larger");
        assertThat(f.remedy()).containsIgnoringCase("lay a larger pipe");
        assertThat(f.field()).isEqualTo("/sections/0/installedSize");
        Finding chosen = only(steel("50 ft", "199 kBtu/h", "'chosenSize':'1/2'"), "section-undersized");
        assertThat(chosen.found()).startsWith("1/2 in. chosen carries");
        assertThat(chosen.remedy()).containsIgnoringCase("choose 3/4 in. or larger");
        assertThat(chosen.field()).isEqualTo("/sections/0/chosenSize");
    }

    @Test
    void aSizeInPlaceWhereNoSizeIsEnoughAsksForMoreThanTheLargest() {
        Finding f = only(
                steel("50 ft", "199 kBtu/h", "'installedSize':'1/2'").with("'availableSizes':{'steel':['1/2']}"),
                "section-undersized");
        assertThat(f.required()).isEqualTo("more than the largest size that can be had");
    }

    @Test
    void aRunBeyondTheLastRowHasNoSize() {
        Finding f = only(steel("2,001 ft", "20 kBtu/h"), "section-no-size");
        assertThat(f.found()).isEqualTo("The longest run is 2,001.0 ft");
        assertThat(f.required()).isEqualTo("at most 2000 ft, the last row of the table");
        assertThat(f.field()).isEqualTo("/sections/0/legs");
    }

    @Test
    void aLoadBeyondTheLargestSizeSaysWhetherTheShopOrTheTableEnds() {
        Finding table = only(steel("50 ft", "100,000 kBtu/h"), "section-no-size");
        assertThat(table.found()).isEqualTo("The load is 100,000,000 Btu/h, more than the largest size carries");
        assertThat(table.remedy()).containsIgnoringCase("split the load, use another material");
        assertThat(table.field()).isEqualTo("/sections/0/material");
        Finding shop = only(steel("50 ft", "199 kBtu/h").with("'availableSizes':{'steel':['1/2']}"), "section-no-size");
        assertThat(shop.found()).endsWith("more than the largest size that can be had carries");
        assertThat(shop.remedy()).containsIgnoringCase("name a larger size");
        assertThat(shop.field()).isEqualTo("/availableSizes/steel");
    }

    @Test
    void corrugatedTubingWithoutATableAsksForTheMakers() {
        Finding f = only(
                plain("11 in w.c.", "1 in w.c.")
                        .section("A", "R", "csst", "30 ft")
                        .appliance("a", "A", "40 kBtu/h"),
                "section-no-size");
        assertThat(f.found()).contains("no table of").endsWith("at 11 in. w.c. with a drop of 1 in. w.c.");
        assertThat(f.ask().orElseThrow()).contains("11 in. w.c. with a drop of 1 in. w.c.");
        assertThat(f.field()).isEqualTo("/tubingTables");
        Finding memory = only(
                plain("5 psi", "3.5 psi").section("A", "R", "csst", "30 ft").appliance("a", "A", "40 kBtu/h"),
                "section-no-size");
        assertThat(memory.found()).endsWith("at 5 psi with a drop of 3.5 psi is held from memory throughout");
        assertThat(memory.field()).isEqualTo("/useMemoryTables");
    }

    @Test
    void anOwnTableForAnotherPressureMaterialOrNameDoesNotFit() {
        String maker = "'tubingTables':[{'name':'maker','material':'csst','inlet':'11 in w.c.','drop':'0.5 in w.c.',"
                + "'csv':'length_ft,13,18\\n100,30,90\\n'},{'name':'other','material':'csst','inlet':'11 in w.c.',"
                + "'drop':'0.5 in w.c.','csv':'length_ft,13,18\\n100,50,60\\n'}]";
        PlannedHouse own = plain("11 in w.c.", "0.5 in w.c.")
                .with(maker)
                .section("A", "R", "csst", "30 ft", "'table':'other'")
                .appliance("a", "A", "45 kBtu/h");
        assertThat(own.size().section(0).size()).contains("13");
        assertThat(own.size().section(0).capacity().orElseThrow().btuh()).isEqualTo(50_000);
        for (PlannedHouse misfit : List.of(
                plain("11 in w.c.", "1 in w.c.").section("A", "R", "csst", "30 ft", "'table':'maker'"),
                plain("12 in w.c.", "0.5 in w.c.").section("A", "R", "csst", "30 ft", "'table':'maker'"),
                plain("11 in w.c.", "0.5 in w.c.").section("A", "R", "steel", "30 ft", "'table':'maker'"))) {
            Finding f = only(misfit.with(maker).appliance("a", "A", "45 kBtu/h"), "section-no-size");
            assertThat(f.found()).startsWith("The table \"maker\" is not for");
            assertThat(f.field()).isEqualTo("/sections/0/table");
        }
    }

    /** Rows of 2018 IFGC Table 402.4 for CSST beyond 60 ft are held from memory or a page that repeats them. */
    @Test
    void aSizeFromARowHeldFromMemoryAsksForThePrint() {
        Finding f = only(
                plain("11 in w.c.", "0.5 in w.c.")
                        .section("A", "R", "csst", "150 ft")
                        .appliance("a", "A", "20 kBtu/h"),
                "size-from-memory");
        assertThat(f.found()).startsWith("EHD ").contains("rests on the row of 150 ft, which is held from memory");
        assertThat(f.field()).isEqualTo("/sections/0/table");
        assertThat(SizingFindings.of(steel("50 ft", "40 kBtu/h").size()))
                .noneMatch(s -> s.rule().equals("size-from-memory"));
    }

    @Test
    void turnsNotDescribedAreToldWhereTheyCount() {
        PlannedHouse house = steel("50 ft", "40 kBtu/h");
        assertThat(SizingFindings.of(house.size())).isEmpty();
        Finding f = only(house.with("'fittingAllowance':'counted'"), "entry-missing");
        assertThat(f.found()).contains("50.0 ft", "a fifth");
        assertThat(f.field()).isEqualTo("/sections/0/legs");
        assertThat(SizingFindings.of(steel("north 50 ft", "40 kBtu/h")
                        .with("'fittingAllowance':'counted'")
                        .size()))
                .isEmpty();
    }

    @Test
    void theSeriesOfTubingIsAskedForUntilItOrATableIsNamed() {
        PlannedHouse csst = plain("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "csst", "30 ft")
                .appliance("a", "A", "40 kBtu/h", "'connection':'none'");
        assertThat(only(csst, "entry-missing").field()).isEqualTo("/availableSizes/csst");
        assertThat(SizingFindings.of(
                        csst.with("'availableSizes':{'csst':['13','18','23']}").size()))
                .isEmpty();
    }

    @Test
    void aHookupNotEnteredIsAskedForWithWhatIsCounted() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 48 ft")
                .appliance("heater", "A", "120 kBtu/h", "'kind':'storage-water-heater'");
        Finding f = only(house, "entry-missing");
        // 48 + 1.55 + 3.10 = 52.65 ft, and row 60 gives 1/2 in. 110,000; 3/4 in.: 48 + 2.06 + 4.12 = 54.18 ft
        assertThat(f.found())
                .contains("are not entered; a shutoff and a sediment trap are counted")
                .contains("54.2 ft with parts not entered, 48.0 ft without")
                .endsWith("section A is 1/2 in. without, 3/4 in. with");
        assertThat(f.field()).isEqualTo("/appliances/0/connection");
    }

    @Test
    void whereNoSizeDiffersThatIsSaid() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft")
                .appliance("range", "A", "40 kBtu/h", "'kind':'range'");
        assertThat(only(house, "entry-missing").found())
                .contains("; a shutoff is counted")
                .contains("21.6 ft with parts not entered, 20.0 ft without")
                .endsWith("; no size on the way differs");
    }

    @Test
    void partsNotSeenAreAskedAboutInTheirOrder() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft")
                .appliance(
                        "range",
                        "A",
                        "40 kBtu/h",
                        "'kind':'range','connection':[{'part':'shutoff','seen':true},"
                                + "{'part':'flexible-connector','seen':false},{'seen':false}]");
        Finding f = only(house, "entry-missing");
        assertThat(f.found()).contains("assumed, not seen: flexible connector, a part without a kind");
        assertThat(f.field()).isEqualTo("/appliances/0/connection/1/seen");
    }

    @Test
    void onlyTheFirstThreeSizesThatGrowAreNamedAndHowManyMore() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.");
        String from = "R";
        for (String id : List.of("A", "B", "C", "D", "E")) {
            house.section(id, from, "steel", id.equals("A") ? "north 46 ft" : "north 0.5 ft");
            from = id;
        }
        house.appliance("heater", "E", "120 kBtu/h", "'kind':'storage-water-heater'");
        assertThat(only(house, "entry-missing").found())
                .contains("section A is 1/2 in. without, 3/4 in. with; section B", "section C")
                .doesNotContain("section D")
                .endsWith("; and 2 more");
    }

    @Test
    void threeSizesThatGrowAreAllNamed() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 47 ft")
                .section("B", "A", "steel", "north 0.5 ft")
                .section("C", "B", "steel", "north 0.5 ft")
                .appliance("heater", "C", "120 kBtu/h", "'kind':'storage-water-heater'");
        assertThat(only(house, "entry-missing").found())
                .contains("section C is")
                .doesNotContain("more");
    }

    /** Table A.2.2: an elbow in 2 in. steel is 5.17 ft. */
    @Test
    void aPipeInPlaceCountsItsFittingsAtItsOwnSize() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft;east 3 ft", "'installedSize':'2'")
                .appliance("heater", "A", "40 kBtu/h", "'connection':'none'");
        assertThat(house.size().counted(0)).contains(Length.ofFeet(5.17));
    }

    /** 1/2 in. nominal copper is sold as 5/8 in. by its outside diameter (ASTM B88). */
    @Test
    void copperIsAlsoToldByItsOutsideDiameter() {
        PlannedHouse house = plain("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "copper", "20 ft")
                .appliance("heater", "A", "80 kBtu/h", "'connection':'none'");
        assertThat(house.size().section(0).size()).contains("1/2");
        assertThat(house.size().section(0).sizeOd()).contains("5/8");
        assertThat(steel("20 ft", "40 kBtu/h").size().section(0).sizeOd()).isEmpty();
        PlannedHouse none = plain("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "copper", "20 ft")
                .appliance("heater", "A", "90,000 kBtu/h", "'connection':'none'");
        assertThat(none.size().section(0).sizeOd()).isEmpty();
    }

    @Test
    void onePartIsAndTwoAre() {
        assertThat(AssumedParts.words(List.of(PartKind.SHUTOFF))).isEqualTo("a shutoff is");
        assertThat(AssumedParts.words(List.of(PartKind.SHUTOFF, PartKind.SEDIMENT_TRAP)))
                .isEqualTo("a shutoff and a sediment trap are");
    }

    /** 2018 IFGC Table 402.4(28): 1/2 in., 0.622 in. inside, carries 122,000 Btu/h over 50 ft. */
    @Test
    void aSizeTellsItsBoreAndTheShareOfItsCapacityInUse() {
        SectionSize size = steel("50 ft", "61 kBtu/h").size().section(0);
        assertThat(size.bore()).contains(Bore.ofInches(0.622));
        assertThat(size.shareUsed().orElseThrow()).isCloseTo(0.5, within(1e-9));
        SectionSize none = steel("50 ft", "100,000 kBtu/h").size().section(0);
        assertThat(none.shareUsed()).isEmpty();
        assertThat(none.bore()).isEmpty();
    }

    @Test
    void whatASectionsOwnFittingsAddIsTheirsAloneAndUnknownWhereItsStageIs() {
        PlannedHouse house = PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .section("A", "R", "steel", "north 20 ft;east 3 ft")
                .section("B", "A", "steel", "east 5 ft;up 3 ft")
                .appliance("range", "B", "40 kBtu/h", "'kind':'range','connection':[{'part':'shutoff'}]");
        assertThat(house.size().counted(0)).contains(Length.ofFeet(1.55));
        assertThat(house.size().counted(1).orElseThrow().feet()).isCloseTo(3.10, within(1e-9));
        assertThat(house.lastWithout("sections", "legs").size().counted(0)).isEmpty();
    }
}
