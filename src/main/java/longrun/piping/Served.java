package longrun.piping;

import java.util.Optional;
import longrun.quantity.HeatRate;

/**
 * What hangs on a regulator or a section.
 *
 * @param known the inputs entered, with the reserves of capped outlets
 * @param missing JSON pointer of the first input or reserve not entered; empty where the sum is whole
 * @param appliances how many
 * @param onlyGrills whether each of them is an outdoor grill
 */
public record Served(HeatRate known, Optional<String> missing, int appliances, boolean onlyGrills) {

    static final Served NOTHING = new Served(HeatRate.ZERO, Optional.empty(), 0, true);

    static Served unknown(String pointer) {
        return new Served(HeatRate.ZERO, Optional.of(pointer), 0, false);
    }

    /** What may come upon a regulator, since it hangs on nothing yet. */
    static Served loose(String pointer) {
        return new Served(HeatRate.ZERO, Optional.of(pointer), 0, true);
    }

    Served plus(Served other) {
        return new Served(
                known.plus(other.known),
                missing.isPresent() ? missing : other.missing,
                appliances + other.appliances,
                onlyGrills && other.onlyGrills);
    }
}
