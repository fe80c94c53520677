package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.choice.PartKind;

/**
 * The parts at a section's end that hold the gas back. Where a hookup is not entered, those that the rules will ask for
 * at that kind of appliance: one shutoff (2018 IFGC 409.5), and one sediment trap unless the kind is excused (408.4).
 *
 * @param traps sediment traps
 * @param shutoffs shutoffs
 * @param assumed those among them that nobody has entered
 */
record EndParts(int traps, int shutoffs, List<PartKind> assumed) {

    static final EndParts NONE = new EndParts(0, 0, List.of());

    /** What hangs between a section and its appliance. */
    static EndParts of(Appliance appliance) {
        if (appliance.connection().isUnknown()) {
            List<PartKind> assumed = new ArrayList<>(List.of(PartKind.SHUTOFF));
            if (TrapNeed.of(appliance) != TrapNeed.EXEMPT) {
                assumed.add(PartKind.SEDIMENT_TRAP);
            }
            return new EndParts(assumed.size() - 1, 1, List.copyOf(assumed));
        }
        List<Appliance.Part> parts = appliance.connection().findValue().orElse(List.of());
        // a part of which nobody has said what it is may be the one that holds back most
        int unnamed = (int) parts.stream().filter(p -> !p.part().isKnown()).count();
        return new EndParts(
                count(parts, PartKind.SEDIMENT_TRAP) + unnamed,
                count(parts, PartKind.SHUTOFF),
                java.util.Collections.nCopies(unnamed, PartKind.SEDIMENT_TRAP));
    }

    /** The same without what nobody has entered. */
    EndParts entered() {
        int traps =
                (int) assumed.stream().filter(p -> p == PartKind.SEDIMENT_TRAP).count();
        return new EndParts(this.traps - traps, shutoffs - (assumed.size() - traps), List.of());
    }

    private static int count(List<Appliance.Part> parts, PartKind kind) {
        return (int) parts.stream().filter(p -> p.part().is(kind)).count();
    }

    /** The end parts of a section by what hangs on it. */
    static EndParts of(Optional<Appliance> appliance) {
        return appliance.map(EndParts::of).orElse(NONE);
    }
}
