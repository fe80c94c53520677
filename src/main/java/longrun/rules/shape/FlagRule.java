package longrun.rules.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;

/**
 * A rule about something that is so or is not so.
 *
 * @param where the places it is judged at
 * @param flag the entry
 * @param wanted what it must be
 * @param field the entry's name in the plan
 * @param words what a person is told
 */
public record FlagRule<T>(
        String name,
        Precedence precedence,
        Cases<T> where,
        Function<T, Fact<Boolean>> flag,
        boolean wanted,
        String field,
        Words words)
        implements Rule {

    /** The words of such a rule; {@code {who}} stands for the place. */
    public record Words(String found, String missing, String remedy, Question question) {}

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Case<T> at : where.in(house)) {
            Threshold own = house.limits().get(name, at.variants().get(0));
            verdicts.add(at.findSettled(own).orElseGet(() -> judge(house, at, own)));
        }
        return verdicts;
    }

    private Verdict judge(House house, Case<T> at, Threshold own) {
        Fact<Boolean> entered = flag.apply(at.thing().orElseThrow());
        String pointer = at.place().pointer() + "/" + field;
        State state = judge(entered);
        if (!own.asks()) {
            Optional<Threshold> other = house.limits().findOtherThatAsks(name, own.variant());
            if (state == State.BROKEN && other.isPresent()) {
                return Judge.stricterElsewhere(
                        own, other.get(), State.NOT_FOR_THIS_PLAN, at.place(), found(entered), words.remedy(), pointer);
            }
            return Judge.notFor(own, at.place());
        }
        return switch (state) {
            case HOLDS -> Judge.holds(own, at.place());
            case BROKEN -> Judge.broken(own, at.place(), found(entered), words.remedy(), pointer);
            default -> Judge.asks(own, at.place(), words.missing(), words.question(), pointer);
        };
    }

    /** "None" is the plain no. */
    private State judge(Fact<Boolean> entered) {
        return entered.fold(
                so -> so == wanted ? State.HOLDS : State.BROKEN,
                () -> wanted ? State.BROKEN : State.HOLDS,
                () -> State.ASKS);
    }

    private String found(Fact<Boolean> entered) {
        return words.found() + " " + EntryName.entered(field, entered);
    }
}
