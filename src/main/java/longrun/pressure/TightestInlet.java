package longrun.pressure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.quantity.Pressure;

/**
 * The appliance whose inlet has the least to spare over its label's least pressure, everything firing; where no label is
 * known, the one that gets the least.
 *
 * @param appliance its index in the plan
 * @param atInlet the pressure there
 * @param least what its label asks for; empty where no label is known
 * @param unknown how many appliances could not be compared: no pressure is known there, or no label where others have one
 */
public record TightestInlet(int appliance, Pressure atInlet, Optional<Pressure> least, int unknown) {

    /** Empty where no appliance's pressure is known. */
    public static Optional<TightestInlet> of(Pressures pressures) {
        List<TightestInlet> known = new ArrayList<>();
        int count = pressures.outlets().size();
        for (int i = 0; i < count; i++) {
            Optional<Pressure> at = pressures.outlet(i).pressureAtInlet();
            if (at.isPresent()) {
                Optional<Pressure> least = pressures
                        .sizing()
                        .piping()
                        .plan()
                        .appliances()
                        .get(i)
                        .minInlet()
                        .findValue();
                known.add(new TightestInlet(i, at.get(), least, 0));
            }
        }
        List<TightestInlet> labelled =
                known.stream().filter(t -> t.least().isPresent()).toList();
        List<TightestInlet> compared = labelled.isEmpty() ? known : labelled;
        return compared.stream()
                .min(Comparator.comparingDouble(t -> t.spare().inWc()))
                .map(t -> new TightestInlet(t.appliance, t.atInlet, t.least, count - compared.size()));
    }

    /** What is over the label's least; the pressure itself where no label is known. */
    public Pressure spare() {
        return least.map(atInlet::minus).orElse(atInlet);
    }
}
