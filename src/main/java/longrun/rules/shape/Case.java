package longrun.rules.shape;

import java.util.List;
import java.util.Optional;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;

/**
 * One place at which a rule is judged: a thing to judge, or a verdict that is already settled (nothing of the kind is
 * there, or what would show it is not entered).
 *
 * @param variants the rows of the rule that could hold here: one where the case is clear, several where an entry that
 *     decides between them is missing
 * @param doubt the question that decides between several variants
 * @param <T> what is judged
 */
public record Case<T>(
        Place place, Optional<T> thing, List<String> variants, Optional<Doubt> doubt, Optional<State> settled) {

    /** What to ask where several variants could hold, and the entry that answers it. */
    public record Doubt(String found, Question question, String field) {}

    public static <T> Case<T> of(Place place, T thing) {
        return new Case<>(place, Optional.of(thing), List.of(""), Optional.empty(), Optional.empty());
    }

    public static <T> Case<T> of(Place place, T thing, String variant) {
        return new Case<>(place, Optional.of(thing), List.of(variant), Optional.empty(), Optional.empty());
    }

    public static <T> Case<T> between(Place place, T thing, List<String> variants, Doubt doubt) {
        return new Case<>(place, Optional.of(thing), List.copyOf(variants), Optional.of(doubt), Optional.empty());
    }

    public static <T> Case<T> notFor(Place place) {
        return new Case<>(place, Optional.empty(), List.of(""), Optional.empty(), Optional.of(State.NOT_FOR_THIS_PLAN));
    }

    public static <T> Case<T> asks(Place place, String found, Question question, String field) {
        return new Case<>(
                place,
                Optional.empty(),
                List.of(""),
                Optional.of(new Doubt(found, question, field)),
                Optional.of(State.ASKS));
    }

    /** The verdict, where it is settled without looking at a thing. */
    public Optional<Verdict> findSettled(Threshold t) {
        return settled.map(state -> doubt.map(d -> Judge.asks(t, place, d.found(), d.question(), d.field()))
                .orElseGet(() -> Verdict.of(t.rule(), place, state)));
    }
}
