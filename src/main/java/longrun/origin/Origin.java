package longrun.origin;

import java.util.List;
import java.util.Optional;

/**
 * One node of the answer to "where from?": a figure, how it came about, and what it came from. Built when asked, never
 * stored.
 *
 * @param figure what the number is, in trade words
 * @param value the number with its unit, as text
 * @param how table, row and column; equation; rule section; or "entered"
 * @param confidence how sure its source is; empty for what a person entered
 * @param inputs the figures it was made from
 */
public record Origin(String figure, String value, String how, Optional<Confidence> confidence, List<Origin> inputs) {

    public Origin {
        inputs = List.copyOf(inputs);
    }

    /** What a person typed. */
    public static Origin entered(String figure, String value) {
        return new Origin(figure, value, "entered", Optional.empty(), List.of());
    }

    /** A figure that follows from others. */
    public static Origin derived(String figure, String value, String how, Confidence confidence, List<Origin> inputs) {
        return new Origin(figure, value, how, Optional.of(confidence), inputs);
    }
}
