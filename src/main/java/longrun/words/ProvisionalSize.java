package longrun.words;

import java.util.stream.IntStream;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;

/** How a size is shown that rests on something not entered yet. */
public final class ProvisionalSize {

    private ProvisionalSize() {}

    /** " so far", to stand after a size that a missing entry may still make larger; else blank. */
    public static String suffix(Review review, int section) {
        return isProvisional(review, section) ? " so far" : "";
    }

    private static boolean isProvisional(Review review, int section) {
        return review.piping().isProvisional(section)
                && review.sizing().section(section).size().isPresent();
    }

    /** Whether any size is provisional. */
    public static boolean any(Review review) {
        return IntStream.range(0, review.piping().sectionCount()).anyMatch(i -> isProvisional(review, i));
    }

    /** How many sections have a final size that carries their load. */
    public static long sized(Review review) {
        return IntStream.range(0, review.piping().sectionCount())
                .filter(i -> !review.piping().isProvisional(i))
                .mapToObj(review.sizing()::section)
                .map(SectionSize::status)
                .filter(s -> s == SectionStatus.SIZED || s == SectionStatus.ADEQUATE)
                .count();
    }

    /** The longest run without parts nobody has entered or seen, as the rest of a sentence; blank if it is the same. */
    public static String withoutAssumed(Review review, int stage, UnitSystem units) {
        return review.sizing()
                .withoutAssumedParts()
                .map(s -> s.stage(stage).longestRun())
                .filter(run -> !run.equals(review.sizing().stage(stage).longestRun()))
                .map(
                        run -> "; " + units.length(run.orElse(Length.ZERO)) + " "
                                + units.lengthUnit().name()
                                + " without the parts at appliances that are not entered, or not seen, but that the rules ask for")
                .orElse("");
    }
}
