package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.rules.limit.State;
import longrun.rules.shape.House;
import longrun.rules.shape.RuleState;
import org.junit.jupiter.api.Test;

/** Another code or a local amendment: what it changes in one house, and why. */
class WhatChangedTest {

    private static RuleReport report(String code, String nipple) {
        return Rules.check(House.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"code\":" + code
                + ",\"appliances\":[{\"id\":\"heater\",\"kind\":\"furnace\",\"gas\":\"propane\",\"connection\":["
                + "{\"part\":\"shutoff\",\"distance\":\"5 ft\",\"sameRoom\":false,\"accessible\":true},"
                + "{\"part\":\"sediment-trap\",\"nipple\":\"" + nipple
                + "\",\"capPointsDown\":true,\"gasTurns\":true}]}]}")));
    }

    private static List<WhatChanged> between(String before, String after) {
        return WhatChanged.between(report(before, "2 in"), report(after, "2 in"));
    }

    @Test
    void theSameCodeChangesNothing() {
        assertThat(between("{\"profile\":\"fuel-gas-2018\"}", "{\"profile\":\"fuel-gas-2018\"}"))
                .isEmpty();
    }

    @Test
    void anotherCodeAsksForALongerNippleAndNamesNoRoom() {
        List<WhatChanged> changes = between("{\"profile\":\"fuel-gas-2018\"}", "{\"profile\":\"nfpa-54-58\"}");
        assertThat(changes)
                .filteredOn(c -> c.rule().equals("trap-nipple-length"))
                .singleElement()
                .satisfies(c -> {
                    assertThat(c.inWords()).isEqualTo("held, now broken");
                    assertThat(c.required()).contains("3 in");
                    assertThat(c.source()).contains("NFPA 54");
                });
        assertThat(changes)
                .filteredOn(c -> c.rule().equals("shutoff-same-room"))
                .singleElement()
                .satisfies(c -> assertThat(c.before()).isEqualTo(State.BROKEN));
    }

    @Test
    void anAmendmentBreaksWhatHeldAndNamesItsSource() {
        List<WhatChanged> changes = between(
                "{\"profile\":\"fuel-gas-2018\"}",
                "{\"profile\":\"fuel-gas-2018\",\"amendments\":[{\"rule\":\"shutoff-within-reach\",\"limit\":\"3 ft\","
                        + "\"source\":\"county ordinance 12.4\"}]}");
        assertThat(changes).singleElement().satisfies(c -> {
            assertThat(c.inWords()).isEqualTo("held, now broken");
            assertThat(c.at()).isEqualTo("heater");
            assertThat(c.source()).contains("county ordinance 12.4");
        });
    }

    @Test
    void takingItBackMendsIt() {
        List<WhatChanged> changes = between(
                "{\"amendments\":[{\"rule\":\"shutoff-within-reach\",\"limit\":\"3 ft\",\"source\":\"county\"}],"
                        + "\"profile\":\"fuel-gas-2018\"}",
                "{\"profile\":\"fuel-gas-2018\"}");
        assertThat(changes)
                .singleElement()
                .satisfies(c -> assertThat(c.inWords()).isEqualTo("was broken, now holds"));
    }

    private static RuleState state(String rule, String pointer, State state) {
        return new RuleState(rule, "heater", pointer, state);
    }

    private static Finding told(String rule, String field, String required) {
        return FindingBuilder.finding(new RuleName(rule), Severity.MUST_FIX, "heater", Citation.fuelGasCode("409.5"))
                .found("it is not so")
                .required(required)
                .remedy("Make it so.")
                .atEntry(field);
    }

    @Test
    void aPlaceThatIsNoLongerJudgedIsToldWithWhatItHadToBe() {
        RuleReport before = new RuleReport(
                List.of(told("shutoff-access", "/a/0/accessible", "a reach")),
                List.of(
                        state("shutoff-access", "/a/0", State.BROKEN),
                        state("shutoff-size", "/a/0", State.NOT_FOR_THIS_PLAN)));
        assertThat(WhatChanged.between(before, new RuleReport(List.of(), List.of())))
                .singleElement()
                .satisfies(c -> {
                    assertThat(c.inWords()).isEqualTo("was broken, now not for this plan");
                    assertThat(c.found()).isEmpty();
                    assertThat(c.required()).isEqualTo("a reach");
                    assertThat(c.source()).isEqualTo("2018 International Fuel Gas Code, 409.5, 2018");
                });
    }

    @Test
    void ofTwoFindingsAtOneApplianceTheOneOfThePartIsTold() {
        RuleState second = state("shutoff-access", "/a/1", State.HOLDS);
        RuleReport before = new RuleReport(List.of(), List.of(second));
        RuleReport after = new RuleReport(
                List.of(
                        told("shutoff-size", "/a/1/size", "a size"),
                        told("shutoff-access", "/a/0/accessible", "the first reached"),
                        told("shutoff-access", "/a/1/accessible", "the second reached")),
                List.of(state("shutoff-access", "/a/1", State.BROKEN)));
        assertThat(WhatChanged.between(before, after))
                .singleElement()
                .satisfies(c -> assertThat(c.required()).isEqualTo("the second reached"));
    }

    @Test
    void aFindingThatStandsAtAnotherEntryOfTheApplianceIsToldAllTheSame() {
        RuleReport before = new RuleReport(List.of(), List.of(state("shutoff-access", "/a/1", State.HOLDS)));
        RuleReport after = new RuleReport(
                List.of(told("shutoff-size", "/b", "a size"), told("shutoff-access", "/a/0/vent", "vented")),
                List.of(state("shutoff-access", "/a/1", State.BROKEN)));
        assertThat(WhatChanged.between(before, after))
                .singleElement()
                .satisfies(c -> assertThat(c.required()).isEqualTo("vented"));
    }

    @Test
    void anotherLimitIsToldThoughTheStateIsTheSame() {
        RuleReport before = new RuleReport(
                List.of(told("shutoff-within-reach", "/a/0/distance", "at most 6 ft")),
                List.of(state("shutoff-within-reach", "/a/0", State.BROKEN)));
        RuleReport after = new RuleReport(
                List.of(told("shutoff-within-reach", "/a/0/distance", "at most 3 ft")),
                List.of(state("shutoff-within-reach", "/a/0", State.BROKEN)));
        assertThat(WhatChanged.between(before, after)).singleElement().satisfies(c -> {
            assertThat(c.inWords()).isEqualTo("broken, as before, with another limit");
            assertThat(c.required()).isEqualTo("at most 3 ft");
        });
    }

    @Test
    void enteringTheCodeIsToldAsAnsweredAndTakingItOutAsAsked() {
        RuleReport none = new RuleReport(List.of(), List.of(state("entry-missing", "/code/profile", State.ASKS)));
        RuleReport entered = new RuleReport(List.of(), List.of(state("entry-missing", "/code/profile", State.HOLDS)));
        RuleReport left = new RuleReport(List.of(), List.of());
        assertThat(WhatChanged.between(none, entered)).hasSize(1);
        assertThat(WhatChanged.between(entered, none)).hasSize(1);
        assertThat(WhatChanged.between(entered, left)).isEmpty();
        assertThat(WhatChanged.between(left, entered)).isEmpty();
    }

    @Test
    void oneRuleTwiceAtOnePlaceIsComparedEachWithItsOwn() {
        List<RuleState> was = List.of(
                state("shutoff-access", "/a/0", State.HOLDS),
                state("shutoff-access", "/a/0", State.HOLDS),
                state("shutoff-access", "/a/0", State.HOLDS));
        List<RuleState> is = List.of(was.get(0), state("shutoff-access", "/a/0", State.ASKS), was.get(2));
        assertThat(WhatChanged.between(new RuleReport(List.of(), was), new RuleReport(List.of(), is)))
                .singleElement()
                .satisfies(c -> assertThat(c.inWords()).isEqualTo("held, now asks"));
    }
}
