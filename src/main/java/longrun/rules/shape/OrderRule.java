package longrun.rules.shape;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import longrun.plan.choice.PartKind;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;

/**
 * A rule that wants one part of a hookup ahead of others, in the direction the gas flows.
 *
 * @param first the part that must come first
 * @param after the parts that must come after it
 * @param toldElsewhere whether moving a part for another finding mends this too
 * @param remedy what mends it
 */
public record OrderRule(
        String name, PartKind first, List<PartKind> after, Predicate<Hookup> toldElsewhere, String remedy)
        implements ApplianceRule {

    @Override
    public Precedence precedence() {
        return Precedence.ORDER;
    }

    @Override
    public Verdict judge(House house, Threshold own, Hookup hookup) {
        PartKind[] later = after.toArray(new PartKind[0]);
        int leads = hookup.first(first);
        int follows = hookup.first(later);
        if (leads >= 0 && follows >= 0 && follows < leads) {
            return outOfOrder(house, own, hookup, leads, follows);
        }
        Optional<Case<Object>> unseen = own.asks() ? hookup.findUnseen("the order") : Optional.empty();
        if (unseen.isPresent()) {
            return unseen.get().findSettled(own).orElseThrow();
        }
        return leads >= 0 && follows >= 0 && own.asks()
                ? Judge.holds(own, hookup.place())
                : Judge.notFor(own, hookup.place());
    }

    private Verdict outOfOrder(House house, Threshold own, Hookup hookup, int leads, int follows) {
        if (toldElsewhere.test(hookup)) {
            return own.asks() ? Judge.brokenElsewhere(own, hookup.place()) : Judge.notFor(own, hookup.place());
        }
        String found = "at {who} the "
                + words(hookup.parts().get(follows).part().part().findValue().orElse(first)) + " (part " + (follows + 1)
                + ") comes before the " + words(first) + " (part " + (leads + 1) + ")";
        String field = hookup.connectionPointer() + "/" + follows;
        if (own.asks()) {
            return Judge.broken(own, hookup.place(), found, remedy, field);
        }
        return house.limits()
                .findOtherThatAsks(name, "")
                .map(other -> Judge.stricterElsewhere(
                        own, other, State.NOT_FOR_THIS_PLAN, hookup.place(), found, remedy, field))
                .orElseGet(() -> Judge.notFor(own, hookup.place()));
    }

    public static String words(PartKind kind) {
        return Arrays.stream(kind.written().split("-")).collect(Collectors.joining(" "));
    }
}
