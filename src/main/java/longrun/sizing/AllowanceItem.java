package longrun.sizing;

import java.util.Optional;
import longrun.origin.Confidence;
import longrun.quantity.Length;

/**
 * One reason why a run counts as longer than it measures.
 *
 * @param section id of the section it stands in; empty where it is of the whole run
 * @param part in trade words
 * @param length what it adds
 * @param how the equation or table behind it
 * @param confidence how sure that is
 */
public record AllowanceItem(Optional<String> section, String part, Length length, String how, Confidence confidence) {

    /** In trade words, with the section it stands in. */
    public String what() {
        return section.map(s -> s + ", " + part).orElse(part);
    }
}
