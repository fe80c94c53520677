package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import longrun.draft.PlaceKind;
import longrun.draft.demo.DemoHouse;
import longrun.draft.entry.DraftTree;
import longrun.finding.Severity;
import longrun.ui.Shown;
import longrun.ui.frame.Entry;
import org.junit.jupiter.api.Test;

/** What a person enters and what the house makes of it, without a browser. */
class HouseEntriesTest extends OpenHouse {

    @Test
    void theDemoHouseAnswersForTheBurnerTheTankAndTheFill() {
        id = store.create("", DemoHouse.json()).id();
        HouseView page = open("house");
        assertThat(HouseShown.figure(page, "pressure")).endsWith("in. w.c.");
        assertThat(HouseShown.note(page, "pressure")).contains("its label asks for 9 in. w.c.");
        assertThat(HouseShown.note(page, "vapour"))
                .startsWith("keeping 20 psig")
                .contains("433,000 Btu/h at most for a short time", "324,000 Btu/h asked at once");
        assertThat(HouseShown.figure(page, "days")).endsWith("days");
    }

    @Test
    void anEmptyHouseHasNoFigureForThem() {
        HouseView page = open("house");
        assertThat(HouseShown.figure(page, "pressure")).isEqualTo("not yet");
        assertThat(HouseShown.figure(page, "vapour")).isEqualTo("not yet");
        assertThat(HouseShown.figure(page, "days")).isEqualTo("not yet");
    }

    @Test
    void anInputMayBeWrittenInThousandsOrInBtuAndWhatIsTypedStaysInItsField() {
        HouseView page = open("appliances");
        appliances(page).add("furnace");
        Entry input = HouseShown.entry(page, "/appliances/0/input");
        input.getElement().setProperty("value", "199k");
        page.kept("", Map.of("/appliances/0/input Btu/h", "199k"), Optional.empty());
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("199 kBtu/h");
        assertThat(input.text()).isEqualTo("199k");
        assertThat(Shown.saying(input)).contains("199,000 Btu/h");
        page.kept("", Map.of("/appliances/0/input Btu/h", "199,000 BTU"), Optional.empty());
        assertThat(page.session().text("/appliances/0/input")).isEqualTo("199,000 Btu/h");
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void aCountTypedWhileTheProgramWasAwayIsANumber() {
        HouseView page = open("house");
        page.kept("", Map.of("/site/people number", "4"), Optional.empty());
        assertThat(page.session().at("/site/people").node().isNumber()).isTrue();
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void aCountNobodyHasIsRefusedAndOneOutsideTheUsualIsAsked() {
        HouseView page = open("house");
        Entry people = HouseShown.entry(page, "/site/people");
        page.kept("", Map.of("/site/people number", "9999999"), Optional.empty());
        assertThat(people.isWrong()).isTrue();
        assertThat(Shown.saying(people).orElseThrow()).contains("9999999", "up to 1,000");
        page.kept("", Map.of("/site/people number", "45"), Optional.empty());
        assertThat(people.isWrong()).isFalse();
        assertThat(page.session().findings()).anyMatch(f -> f.field().equals("/site/people"));
    }

    @Test
    void ofAnEmptyHouseItIsNeverSaidThatNothingIsLacking() {
        HouseView page = open("house");
        page.session().change(d -> {
            d.put("/fittingAllowance", "counted");
            d.root().putArray("sections");
            d.root().putArray("appliances");
            d.root().putObject("tank");
            d.root().putObject("use").putArray("others").addObject();
        });
        for (PlaceKind place : PlaceKind.values()) {
            assertThat(HouseShown.status(page, place)).doesNotContain("nothing missing");
        }
        assertThat(HouseShown.status(page, PlaceKind.ROUTE)).startsWith("not entered yet");
        assertThat(HouseShown.status(page, PlaceKind.CONNECTIONS)).startsWith("not entered yet");
        assertThat(HouseShown.status(page, PlaceKind.TANK)).startsWith("not entered yet");
        assertThat(HouseShown.status(page, PlaceKind.FUEL)).startsWith("not entered yet");
    }

    @Test
    void aClimateIsABeginningOfTheYear() {
        HouseView page = open("house");
        page.session()
                .change(d -> DraftTree.put(d.root(), "/site/leadDays", d.root().numberNode(7)));
        assertThat(HouseShown.status(page, PlaceKind.FUEL)).doesNotContain("not entered yet");
        assertThat(HouseShown.status(page, PlaceKind.HOT_WATER)).startsWith("not entered yet");
        page.session()
                .change(d ->
                        DraftTree.put(d.root(), "/site/coldWater/temp", d.root().textNode("50 degF")));
        assertThat(HouseShown.status(page, PlaceKind.HOT_WATER)).doesNotContain("not entered yet");
    }

    @Test
    void whatWasNotUnderstoodStandsFirstAmongTheFindings() {
        HouseView page = open("appliances");
        appliances(page).add("furnace");
        page.session().set("/appliances/0/input", "65,000 elephants");
        page.kept("", Map.of("/site/people number", "four"), Optional.empty());
        page = open("findings");
        assertThat(HouseShown.findings(page))
                .startsWith("Not understood, 2")
                .contains(
                        "House, people", "\u201cfour\u201d is not a number", "Appliances, furnace, input", "elephants")
                .contains("go to the entry")
                .doesNotContain("Nothing is found");
        assertThat(HouseShown.status(page, PlaceKind.FINDINGS)).contains("2 entries not understood");
        page.session().remove("/site/people");
        page.session().set("/appliances/0/input", "65,000 Btu/h");
        assertThat(HouseShown.findings(page)).doesNotContain("Not understood");
    }

    @Test
    void aPieceOfPipeIsCalledASectionEverywhereInTheHouse() {
        id = store.create("", longrun.Samples.text("data/demo/orchard-house.json"))
                .id();
        for (PlaceKind place : PlaceKind.values()) {
            HouseView page = open(place.slug());
            String said = Shown.text(page.getElement()) + page.panel().handInShort();
            assertThat(said.replaceAll("(?i)(line regulator|propane line|property line|psi line|lines of date)", ""))
                    .doesNotContainPattern(
                            "\\b[Ll]ines? [A-Z][0-9]?\\b|Fed by line|[Rr]emove (this )?line|[0-9] lines\\b|No line");
        }
    }

    @Test
    void anEntryNotUnderstoodIsLeftOutOnceThePersonGoesOnAndAllTheRestIsAnswered() {
        id = store.create("", DemoHouse.json()).id();
        HouseView page = open("house");
        page.session().set("/site/elevation", "four");
        assertThat(HouseShown.state(page)).contains("What is shown is the answer from before");
        page.session().choose("/appliances/1/gas", "natural");
        assertThat(HouseShown.state(page)).contains("left out");
        assertThat(page.session().findings())
                .anyMatch(f -> f.rule().equals("gas-type") && f.severity() == Severity.MUST_FIX);
    }

    @Test
    void whatIsTypedBesideAnEntryNotUnderstoodKeepsItsAnswerWhenTheKeysRest() {
        id = store.create("", DemoHouse.json()).id();
        HouseView page = open("route");
        page.session().set("/site/elevation", "four");
        page.session().endStep();
        String before = HouseShown.figure(page, "run");
        page.placeShown().typedBefore("legs 1", "up 4, north 6, east 30");
        String answered = HouseShown.figure(page, "run");
        assertThat(answered).isNotEqualTo(before);
        page.session().typingPaused();
        page.placeShown().show(false);
        page.session().choose("/appliances/1/gas", "natural");
        assertThat(HouseShown.figure(page, "run")).isEqualTo(answered);
        page.session().typingPaused();
        assertThat(page.session().findings()).anyMatch(f -> f.rule().equals("gas-type"));
    }

    @Test
    void aHouseOpenedWithAnEntryNotUnderstoodStillTellsWhatMustBeFixed() {
        id = store.create(
                        "",
                        DemoHouse.json()
                                .replace("\"east 12 ft\"", "\"east f\"")
                                .replaceFirst("\"gas\": *\"propane\"", "\"gas\": \"natural\""))
                .id();
        HouseView page = open("findings");
        assertThat(page.session().errors()).isNotEmpty();
        assertThat(HouseShown.state(page)).contains("left out");
        assertThat(page.session().findings()).anyMatch(f -> f.severity() == Severity.MUST_FIX);
        assertThat(page.session().review().orElseThrow().sizing().section(3).size())
                .as("a section whose legs are not understood has no length")
                .isEmpty();
    }

    @Test
    void aHouseOfWhichNothingCanBeReadIsNeverSaidToLackNothing() {
        id = store.create("", "{\"format\":\"longrun-plan/9\",\"appliances\":[{\"id\":\"a\",\"kind\":\"range\"}]}")
                .id();
        HouseView page = open("appliances");
        assertThat(page.session().errors()).isNotEmpty();
        assertThat(Shown.text(page.getElement())).doesNotContain("nothing missing");
        assertThat(page.session().review().isPresent()).isFalse();
        assertThat(HouseShown.figure(page, "open")).isEqualTo("not known");
    }
}
