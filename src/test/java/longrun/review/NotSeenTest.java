package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.holdpoint.HoldPoint;
import longrun.parts.TakeOff;
import longrun.pressure.InletStatus;
import longrun.rules.connector.Connector;
import longrun.rules.limit.State;
import longrun.rules.shape.Rule;
import longrun.rules.shape.RuleState;
import longrun.rules.shutoff.Shutoff;
import longrun.rules.trap.SedimentTrap;
import longrun.sizing.SectionStatus;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is taken as usual and nobody has looked at never passes; it is asked about, and what rests on it is marked. */
class NotSeenTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Set<String> OF_HOOKUPS = Stream.of(Shutoff.rules(), SedimentTrap.rules(), Connector.rules())
            .flatMap(List::stream)
            .map(Rule::name)
            .collect(Collectors.toSet());

    private ObjectNode house;

    @BeforeEach
    void aHouseInWhichNothingIsWrong() throws Exception {
        house = (ObjectNode) JSON.readTree(Samples.text("rules/whole-house.json"));
    }

    private Review review() {
        return Reviewer.standard().review(Samples.plan(house.toString()), ReviewParts.ALL);
    }

    private static List<RuleState> atAppliances(Review review) {
        return review.rules().states().stream()
                .filter(s -> s.pointer().startsWith("/appliances/") && OF_HOOKUPS.contains(s.rule()))
                .toList();
    }

    private void takeAllPartsAsUsual() {
        house.path("appliances").forEach(a -> a.path("connection").forEach(p -> ((ObjectNode) p).put("seen", false)));
    }

    @Test
    void noRuleOfAConnectionHoldsByAPartNobodyHasSeen() {
        assertThat(atAppliances(review())).anyMatch(s -> s.state() == State.HOLDS);
        takeAllPartsAsUsual();
        assertThat(atAppliances(review()))
                .filteredOn(s -> !house.at(s.pointer().replaceAll("(/appliances/\\d+).*", "$1/connection"))
                        .isEmpty())
                .noneMatch(s -> s.state() == State.HOLDS)
                .anyMatch(s -> s.state() == State.ASKS);
    }

    @Test
    void whatIsThereIsAskedOnceAtEachApplianceAndStandsBeforeTheValve() {
        takeAllPartsAsUsual();
        long taken = 0;
        for (JsonNode a : house.path("appliances")) {
            taken += a.path("connection").isEmpty() ? 0 : 1;
        }
        List<Finding> asked = review().findings().stream()
                .filter(f -> f.field().contains("/connection"))
                .toList();
        assertThat(asked).hasSize((int) taken).allSatisfy(f -> {
            assertThat(f.field()).endsWith("/connection/0/seen");
            assertThat(f.found()).contains("assumed, not seen");
            assertThat(f.ask().orElseThrow()).startsWith("Are these the parts fitted at ");
            assertThat(HoldPoint.of(f)).isEqualTo(HoldPoint.CONNECTORS);
        });
    }

    @Test
    void aPartSeenBesideOneThatIsNotPassesByItself() {
        ((ObjectNode) house.at("/appliances/0/connection/1")).put("seen", false);
        assertThat(atAppliances(review()))
                .filteredOn(s -> s.pointer().equals("/appliances/0/connection/0"))
                .anyMatch(s -> s.state() == State.HOLDS);
        assertThat(atAppliances(review()))
                .filteredOn(s -> s.pointer().equals("/appliances/0/connection/1"))
                .noneMatch(s -> s.state() == State.HOLDS);
    }

    @Test
    void whatIsWrongAsAssumedStaysWrong() {
        ((ObjectNode) house.at("/appliances/0/connection/2"))
                .put("throughWall", true)
                .put("seen", false);
        assertThat(review().findings()).anyMatch(f -> f.rule().equals("connector-through-wall"));
    }

    @Test
    void seenIsAsGoodAsNotSaidToBeAssumed() {
        List<RuleState> plain = review().rules().states();
        house.path("appliances").forEach(a -> a.path("connection").forEach(p -> ((ObjectNode) p).put("seen", true)));
        assertThat(review().rules().states()).isEqualTo(plain);
    }

    @Test
    void partsNotSeenAreNamedBesideTheSizesThatRestOnThemAndOnTheList() {
        house.remove("fittingAllowance");
        takeAllPartsAsUsual();
        Review review = review();
        int fed = review.piping()
                .findSection(house.at("/appliances/0/fedBy").asText())
                .orElseThrow();
        assertThat(review.sizing().assumedParts(fed)).isNotEmpty();
        assertThat(TakeOff.of(review.sizing()).lines())
                .filteredOn(l -> l.item().startsWith("Flexible connector"))
                .allSatisfy(l -> assertThat(l.basis()).contains("assumed, not seen"));
        assertThat(review.pressures().outlet(0).connector().assumed()).isTrue();
    }

    @Test
    void aSectionNobodyHasSeenMakesSizesSoFarAndNoInletEnough() {
        Review plain = review();
        String id = house.at("/appliances/0/fedBy").asText();
        int fed = plain.piping().findSection(id).orElseThrow();
        assertThat(plain.piping().isProvisional(fed)).isFalse();
        ((ObjectNode) house.at("/sections/" + fed)).put("assumed", true);
        Review review = review();
        assertThat(review.sizing().section(fed).status()).isIn(SectionStatus.SIZED, SectionStatus.ADEQUATE);
        assertThat(review.piping().isProvisional(fed)).isTrue();
        assertThat(review.pressures().outlet(0).status()).isNotEqualTo(InletStatus.ENOUGH);
        assertThat(review.rules().states())
                .filteredOn(s -> s.pointer().startsWith("/sections/" + fed)
                        && (s.pointer().length() == ("/sections/" + fed).length()
                                || s.pointer().charAt(("/sections/" + fed).length()) == '/'))
                .noneMatch(s -> s.state() == State.HOLDS);
        assertThat(review.findings()).anySatisfy(f -> {
            assertThat(f.field()).isEqualTo("/sections/" + fed + "/assumed");
            assertThat(f.found()).startsWith("Section " + id + " is assumed, not seen");
        });
    }

    @Test
    void sectionsNobodyHasSeenAreAskedAboutTogether() {
        house.path("sections").forEach(s -> ((ObjectNode) s).put("assumed", true));
        assertThat(review().findings().stream().filter(f -> f.field().endsWith("/assumed")))
                .singleElement()
                .satisfies(f -> assertThat(f.found()).startsWith("Sections ").contains(" are assumed, not seen"));
    }
}
