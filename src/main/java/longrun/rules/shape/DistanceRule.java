package longrun.rules.shape;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;

/**
 * A rule that holds a measured distance or length to a least or a greatest one. Which limit decides comes from the
 * thresholds; a distance known only to exceed some length is judged as far as that goes, else it asks.
 *
 * @param where the places it is judged at
 * @param measure the distance entered there
 * @param field the entry's name in the plan
 * @param whenNone what "none" means: for a distance to something dangerous, that there is no such thing
 * @param words what a person is told
 */
public record DistanceRule<T>(
        String name,
        Precedence precedence,
        Cases<T> where,
        Function<T, Fact<Distance>> measure,
        String field,
        State whenNone,
        Words words)
        implements Rule {

    /**
     * The words of a distance rule; {@code {who}}, {@code {entered}} and {@code {limit}} stand for the place, the value
     * as typed and the limit.
     */
    public record Words(String found, String missing, String remedy, Question question) {}

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Case<T> at : where.in(house)) {
            Threshold main = house.limits()
                    .get(name, at.settled().isPresent() ? "" : at.variants().get(0));
            verdicts.add(at.findSettled(main).orElseGet(() -> look(house, at, main)));
        }
        return verdicts;
    }

    private Verdict look(House house, Case<T> at, Threshold main) {
        Fact<Distance> entered = measure.apply(at.thing().orElseThrow());
        String pointer = at.place().pointer() + "/" + field;
        return entered.fold(
                distance -> judge(house, at, distance, found(entered), pointer),
                () -> switch (whenNone) {
                    case BROKEN -> Judge.broken(main, at.place(), found(entered), words.remedy(), pointer);
                    case HOLDS -> Judge.holds(main, at.place());
                    default -> Judge.asks(main, at.place(), words.missing(), words.question(), pointer);
                },
                () -> Judge.asks(main, at.place(), words.missing(), words.question(), pointer));
    }

    private Verdict judge(House house, Case<T> at, Distance distance, String found, String pointer) {
        List<Threshold> limits =
                at.variants().stream().map(v -> house.limits().get(name, v)).toList();
        Set<State> states = EnumSet.noneOf(State.class);
        limits.forEach(t -> states.add(t.test(distance)));
        Threshold decides = limits.stream()
                .filter(t -> t.test(distance) != State.HOLDS)
                .findFirst()
                .orElse(limits.get(0));
        if (states.size() > 1 && at.doubt().isPresent()) {
            Case.Doubt doubt = at.doubt().get();
            return Judge.asks(decides, at.place(), found + "; " + doubt.found(), doubt.question(), doubt.field());
        }
        return switch (decides.test(distance)) {
            case BROKEN -> Judge.broken(decides, at.place(), found, words.remedy(), pointer);
            case ASKS -> Judge.asks(decides, at.place(), found, words.question(), pointer);
            default -> holds(house, at, decides, distance, found, pointer);
        };
    }

    private Verdict holds(House house, Case<T> at, Threshold own, Distance distance, String found, String pointer) {
        Optional<Threshold> stricter = house.limits().findStricterBrokenBy(name, own.variant(), distance);
        return stricter.map(other ->
                        Judge.stricterElsewhere(own, other, State.HOLDS, at.place(), found, words.remedy(), pointer))
                .orElseGet(() -> Judge.holds(own, at.place()));
    }

    private String found(Fact<Distance> entered) {
        return words.found().replace("{entered}", entered.findText().orElse(""));
    }
}
