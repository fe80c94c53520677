package longrun.pressure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.quantity.Pressure;

/**
 * The appliance whose inlet has the least to spare over its label's least pressure, everything firing; where no label is
 * known, the one that gets the least.
 *
 * @param appliance its index in the plan
 * @param atInletInWc the pressure there, in. w.c.
 * @param leastInWc what its label asks for, in. w.c.; empty where no label is known
 * @param unknown how many appliances could not be compared: no pressure is known there, or no label where others have one
 */
public record TightestInlet(int appliance, double atInletInWc, OptionalDouble leastInWc, int unknown) {

    /** Empty where no appliance's pressure is known. */
    public static Optional<TightestInlet> of(Pressures pressures) {
        List<TightestInlet> known = new ArrayList<>();
        int count = pressures.outlets().size();
        for (int i = 0; i < count; i++) {
            OptionalDouble at = pressures.outlet(i).pressureAtInletInWc();
            if (at.isPresent()) {
                Optional<Pressure> least = pressures
                        .sizing()
                        .piping()
                        .plan()
                        .appliances()
                        .get(i)
                        .minInlet()
                        .findValue();
                known.add(new TightestInlet(
                        i,
                        at.getAsDouble(),
                        least.map(p -> OptionalDouble.of(p.inWc())).orElse(OptionalDouble.empty()),
                        0));
            }
        }
        List<TightestInlet> labelled =
                known.stream().filter(t -> t.leastInWc().isPresent()).toList();
        List<TightestInlet> compared = labelled.isEmpty() ? known : labelled;
        return compared.stream()
                .min(Comparator.comparingDouble(TightestInlet::spareInWc))
                .map(t -> new TightestInlet(t.appliance, t.atInletInWc, t.leastInWc, count - compared.size()));
    }

    /** In. w.c. over the label's least; the pressure itself where no label is known. */
    public double spareInWc() {
        return atInletInWc - leastInWc.orElse(0);
    }
}
