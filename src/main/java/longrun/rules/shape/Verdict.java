package longrun.rules.shape;

import java.util.Optional;
import longrun.finding.Finding;
import longrun.rules.limit.State;

/**
 * What one rule says at one place.
 *
 * @param finding what a person is told; empty where the rule holds or another finding already says it
 * @param telling the same before it is said of which place; empty where it can be said of this place alone
 */
public record Verdict(RuleState state, Optional<Finding> finding, Optional<Telling> telling) {

    public static Verdict of(String rule, Place place, State state) {
        return new Verdict(state(rule, place, state), Optional.empty(), Optional.empty());
    }

    public static Verdict of(String rule, Place place, State state, Finding finding) {
        return new Verdict(state(rule, place, state), Optional.of(finding), Optional.empty());
    }

    static Verdict of(Place place, State state, Telling telling) {
        return new Verdict(
                state(telling.limit().rule(), place, state), Optional.of(telling.finding()), Optional.of(telling));
    }

    /** The same state, told of several places at once. */
    Verdict about(Place all) {
        return new Verdict(state, telling.map(t -> t.about(all)), telling);
    }

    /** A question instead, told elsewhere. */
    Verdict asking() {
        return new Verdict(
                new RuleState(state.rule(), state.at(), state.pointer(), State.ASKS),
                Optional.empty(),
                Optional.empty());
    }

    /** The same state, told elsewhere. */
    Verdict untold() {
        return new Verdict(state, Optional.empty(), Optional.empty());
    }

    private static RuleState state(String rule, Place place, State state) {
        return new RuleState(rule, place.at(), place.pointer(), state);
    }
}
