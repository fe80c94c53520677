package longrun.rules.shape;

import java.util.Optional;
import longrun.finding.Finding;
import longrun.rules.limit.State;

/**
 * What one rule says at one place. Its words are put together only when they are asked for: of many places that are told
 * together all but one are never told by themselves.
 */
public final class Verdict {

    private final RuleState state;
    private final Optional<Finding> said;
    private final Optional<Telling> telling;
    private final Optional<Place> who;

    private Verdict(RuleState state, Optional<Finding> said, Optional<Telling> telling, Optional<Place> who) {
        this.state = state;
        this.said = said;
        this.telling = telling;
        this.who = who;
    }

    public static Verdict of(String rule, Place place, State state) {
        return untold(new RuleState(rule, place.at(), place.pointer(), state));
    }

    public static Verdict of(String rule, Place place, State state, Finding finding) {
        return new Verdict(
                new RuleState(rule, place.at(), place.pointer(), state),
                Optional.of(finding),
                Optional.empty(),
                Optional.empty());
    }

    static Verdict of(Place place, State state, Telling telling) {
        return new Verdict(
                new RuleState(telling.limit().rule(), place.at(), place.pointer(), state),
                Optional.empty(),
                Optional.of(telling),
                Optional.of(telling.place()));
    }

    private static Verdict untold(RuleState state) {
        return new Verdict(state, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public RuleState state() {
        return state;
    }

    /** What a person is told; empty where the rule holds or another finding already says it. */
    public Optional<Finding> finding() {
        return said.isPresent() ? said : who.flatMap(all -> telling.map(t -> t.about(all)));
    }

    /** JSON pointer of the entry that mends it; empty where nothing is told. */
    public Optional<String> field() {
        return said.isPresent() ? said.map(Finding::field) : who.flatMap(all -> telling.map(Telling::field));
    }

    /** The same before it is said of which place; empty where it can be said of this place alone. */
    Optional<Telling> telling() {
        return telling;
    }

    /** The same state, told of several places at once. */
    Verdict about(Place all) {
        return new Verdict(state, said, telling, Optional.of(all));
    }

    /** A question instead, told elsewhere. */
    Verdict asking() {
        return untold(new RuleState(state.rule(), state.at(), state.pointer(), State.ASKS));
    }

    /** The same state, told elsewhere. */
    Verdict untold() {
        return untold(state);
    }

    /** The same words, said for good, with the state at another place. */
    public Verdict at(Place place) {
        return new Verdict(
                new RuleState(state.rule(), place.at(), place.pointer(), state.state()),
                finding(),
                Optional.empty(),
                Optional.empty());
    }
}
