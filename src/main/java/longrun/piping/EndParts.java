package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.choice.PartKind;

/**
 * The parts at a section's end that hold the gas back. Where a hookup is not entered, those that the rules will ask for
 * at that kind of appliance: one shutoff (2018 IFGC 409.5), and one sediment trap unless the kind is excused (408.4).
 * Parts that nobody has looked at are no fewer than those.
 *
 * @param traps sediment traps
 * @param shutoffs shutoffs
 * @param assumed those among them that nobody has entered, or nobody has looked at
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
        int traps = count(parts, PartKind.SEDIMENT_TRAP) + unnamed;
        int shutoffs = count(parts, PartKind.SHUTOFF);
        List<PartKind> assumed = new ArrayList<>(java.util.Collections.nCopies(unnamed, PartKind.SEDIMENT_TRAP));
        if (!appliance.hasPartsNotSeen()) {
            return new EndParts(traps, shutoffs, List.copyOf(assumed));
        }
        parts.stream()
                .filter(p -> !p.isSeen())
                .flatMap(p -> p.part().findValue().stream())
                .filter(k -> k == PartKind.SHUTOFF || k == PartKind.SEDIMENT_TRAP)
                .forEach(assumed::add);
        // what was taken as usual may leave out what the rules will ask for once somebody looks
        if (shutoffs == 0) {
            assumed.add(PartKind.SHUTOFF);
        }
        boolean builtIn = parts.stream().anyMatch(p -> p.part().is(PartKind.BUILT_IN_TRAP) && p.isSeen());
        boolean trapToCome = traps == 0 && !builtIn && TrapNeed.of(appliance) != TrapNeed.EXEMPT;
        if (trapToCome) {
            assumed.add(PartKind.SEDIMENT_TRAP);
        }
        return new EndParts(traps + (trapToCome ? 1 : 0), Math.max(1, shutoffs), List.copyOf(assumed));
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
