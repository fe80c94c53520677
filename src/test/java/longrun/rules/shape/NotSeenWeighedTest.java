package longrun.rules.shape;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.limit.Thresholds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What nobody has looked at passes no rule, and is asked once: whether it is there. */
class NotSeenWeighedTest {

    private static final NotSeen NOT_SEEN = new NotSeen(Samples.plan("""
            { "format": "longrun-plan/1",
              "regulators": [ { "id": "R" } ],
              "sections": [ { "id": "A", "assumed": true }, { "id": "B" } ],
              "appliances": [
                { "id": "one", "connection": [ { "part": "shutoff", "seen": true }, { "part": "union", "seen": false } ] },
                { "id": "two", "connection": [ { "part": "shutoff" } ] } ] }
            """));

    private static final Threshold ANY = Thresholds.builtIn().listAll().get(0);

    @ParameterizedTest
    @CsvSource({
        "/sections/0, false, ASKS",
        "/sections/0/passes/1, false, ASKS",
        "/sections/1, false, HOLDS",
        "/appliances/0, true, ASKS",
        "/appliances/0, false, HOLDS",
        "/appliances/0/connection/0, true, HOLDS",
        "/appliances/0/connection/1, true, ASKS",
        "/appliances/0/connection/1, false, HOLDS",
        "/appliances/1, true, HOLDS",
        "/regulators/0, true, HOLDS",
        "/site, true, HOLDS"
    })
    void whatHoldsByAnEntryNobodyHasLookedAtIsAQuestion(String pointer, boolean ofHookups, State expected) {
        Verdict holds = Judge.holds(ANY, new Place("x", pointer, "x"));
        assertThat(NOT_SEEN.weighed(holds, ofHookups).state().state()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "/sections/0/assumed, false",
        "/sections/0/material, true",
        "/appliances/0/connection/1/size, false",
        "/appliances/0/connection/0/size, true",
        "/appliances/0/connection/2/size, true",
        "/appliances/0/connection, true",
        "/appliances/1/connection/0/size, true",
        "/appliances/0/input, true",
        "/appliances, true",
        "/regulators/0/kind, true",
        "/regulators/0/connection/1, true",
        "/site/snowDepth, true"
    })
    void whatIsAskedAboutItWaitsUntilSomebodyHasSeenIt(String entry, boolean told) {
        Verdict asks = Judge.asks(ANY, new Place("x", "/site", "x"), "not entered", Question.owner("What?"), entry);
        assertThat(NOT_SEEN.weighed(asks, true).finding().isPresent()).isEqualTo(told);
        assertThat(NOT_SEEN.weighed(asks, true).state().state()).isEqualTo(State.ASKS);
    }
}
