package longrun.piping;

import java.util.OptionalDouble;

/**
 * What a section must carry.
 *
 * @param knownBtuh the sum of what is known, Btu/h
 * @param complete whether nothing below the section is missing
 */
public record Load(double knownBtuh, boolean complete) {

    static final Load NOTHING = new Load(0, true);
    static final Load MISSING = new Load(0, false);

    Load plus(Load other) {
        return new Load(knownBtuh + other.knownBtuh, complete && other.complete);
    }

    /** The load, where all of it is known; a part of it is never taken for the whole. */
    public OptionalDouble btuh() {
        return complete ? OptionalDouble.of(knownBtuh) : OptionalDouble.empty();
    }
}
