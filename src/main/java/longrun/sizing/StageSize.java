package longrun.sizing;

import java.util.Optional;
import longrun.piping.Outlet;
import longrun.quantity.Length;

/**
 * The one length by which all of a stage is sized.
 *
 * @param known whether nothing of the stage's own entries is missing
 * @param longestRun measured and allowance
 * @param measured the measured part of that run
 * @param longestRunTo where that run ends
 */
public record StageSize(
        boolean known, Optional<Length> longestRun, Optional<Length> measured, Optional<Outlet> longestRunTo) {

    static StageSize unknown() {
        return new StageSize(false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What fittings add to the longest run. */
    public Optional<Length> allowance() {
        return longestRun.flatMap(whole -> measured.map(whole::minus));
    }
}
