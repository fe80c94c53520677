package longrun.words;

import java.util.stream.IntStream;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;

/** How the answer says that a figure rests on something not entered yet. */
public final class SoFar {

    private SoFar() {}

    /** " so far" after a size that an entry still to come may make larger. */
    public static String word(Review review, int section) {
        return isSoFar(review, section) ? " so far" : "";
    }

    private static boolean isSoFar(Review review, int section) {
        return review.piping().isProvisional(section)
                && review.sizing().section(section).size().isPresent();
    }

    /** Whether any size is a size so far. */
    public static boolean any(Review review) {
        return IntStream.range(0, review.piping().sectionCount()).anyMatch(i -> isSoFar(review, i));
    }

    /** Sections that have a size which carries their load, and nothing still to come upon it. */
    public static long sized(Review review) {
        return IntStream.range(0, review.piping().sectionCount())
                .filter(i -> !review.piping().isProvisional(i))
                .mapToObj(review.sizing()::section)
                .map(SectionSize::status)
                .filter(s -> s == SectionStatus.SIZED || s == SectionStatus.ADEQUATE)
                .count();
    }

    /** The other length of a stage's longest run, where parts are counted that nobody has entered. */
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
