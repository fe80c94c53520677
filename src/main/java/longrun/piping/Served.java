package longrun.piping;

import java.util.Optional;

/**
 * What hangs on a regulator or a section.
 *
 * @param btuh the inputs entered, Btu/h, with the reserves of capped outlets
 * @param missing JSON pointer of the first input or reserve not entered; empty where the sum is whole
 * @param appliances how many
 * @param onlyGrills whether each of them is an outdoor grill
 */
public record Served(double btuh, Optional<String> missing, int appliances, boolean onlyGrills) {

    static final Served NOTHING = new Served(0, Optional.empty(), 0, true);

    static Served unknown(String pointer) {
        return new Served(0, Optional.of(pointer), 0, false);
    }

    /** What may come upon a regulator, since it hangs on nothing yet. */
    static Served loose(String pointer) {
        return new Served(0, Optional.of(pointer), 0, true);
    }

    Served plus(Served other) {
        return new Served(
                btuh + other.btuh,
                missing.isPresent() ? missing : other.missing,
                appliances + other.appliances,
                onlyGrills && other.onlyGrills);
    }
}
