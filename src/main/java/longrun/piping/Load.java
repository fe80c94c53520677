package longrun.piping;

import java.util.Optional;
import longrun.quantity.HeatRate;

/**
 * What a section must carry.
 *
 * @param known the sum of what is known
 * @param complete whether nothing below the section is missing
 */
public record Load(HeatRate known, boolean complete) {

    static final Load NOTHING = new Load(HeatRate.ZERO, true);
    static final Load MISSING = new Load(HeatRate.ZERO, false);

    Load plus(Load other) {
        if (this == NOTHING || other == NOTHING) {
            return this == NOTHING ? other : this;
        }
        return new Load(known.plus(other.known), complete && other.complete);
    }

    /** The load, where all of it is known; a part of it is never taken for the whole. */
    public Optional<HeatRate> whole() {
        return complete ? Optional.of(known) : Optional.empty();
    }
}
