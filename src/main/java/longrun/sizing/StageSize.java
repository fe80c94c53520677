package longrun.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import longrun.piping.Outlet;

/**
 * The one length by which all of a stage is sized.
 *
 * @param known whether nothing of the stage's own entries is missing
 * @param longestRunFt measured and allowance, feet
 * @param measuredFt the measured part of that run, feet
 * @param longestRunTo where that run ends
 */
public record StageSize(
        boolean known, OptionalDouble longestRunFt, OptionalDouble measuredFt, Optional<Outlet> longestRunTo) {

    static StageSize unknown() {
        return new StageSize(false, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    /** What fittings add to the longest run, feet. */
    public OptionalDouble allowanceFt() {
        return longestRunFt.isPresent() && measuredFt.isPresent()
                ? OptionalDouble.of(longestRunFt.getAsDouble() - measuredFt.getAsDouble())
                : OptionalDouble.empty();
    }
}
