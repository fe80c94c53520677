package longrun.rules.shape;

import java.util.Optional;
import java.util.function.Function;
import longrun.finding.EntryName;
import longrun.plan.choice.PartKind;
import longrun.rules.limit.Threshold;

/**
 * A rule that wants a part in the row between pipe and appliance.
 *
 * @param needed where the part is needed, a settled case where that is not known; empty where it is not needed
 */
public record MissingPart(
        String name, PartKind part, Function<Hookup, Optional<Case<Hookup>>> needed, String found, String remedy)
        implements ApplianceRule {

    @Override
    public Verdict judge(House house, Threshold own, Hookup hookup) {
        Optional<Case<Hookup>> wanted = needed.apply(hookup);
        if (wanted.isEmpty()) {
            return Judge.notFor(own, hookup.place());
        }
        if (hookup.has(part) || (part == PartKind.SEDIMENT_TRAP && hookup.has(PartKind.BUILT_IN_TRAP))) {
            return Judge.holds(own, hookup.place());
        }
        Optional<Case<Hookup>> unseen = hookup.findUnseen("the " + OrderRule.words(part));
        return unseen.or(() -> wanted)
                .flatMap(c -> c.findSettled(own))
                .orElseGet(() -> Judge.broken(own, hookup.place(), found(hookup), remedy, hookup.connectionPointer()));
    }

    private String found(Hookup hookup) {
        return hookup.appliance().connection().isNone() ? found + " " + EntryName.entered("connection", "none") : found;
    }
}
