package longrun.checked.published;

import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.DataRow;

/**
 * A case whose answer is published.
 *
 * @param id known by it in tests and links
 * @param title what it is
 * @param given in words
 * @param work the kind of computation that answers it
 * @param input the same as {@code given}, for that computation
 * @param published the answers, in order
 * @param unit of the answers; {@code size} where they are sizes
 * @param within how far ours may be from them
 * @param why that far and no further, and what is to be said of the print
 * @param publication where it stands
 * @param edition blank where it has none
 * @param place table, section or page; blank where it is not known
 * @param confidence how sure it is that the publication says so
 */
public record PublishedCase(
        String id,
        String title,
        String given,
        String work,
        Given input,
        List<String> published,
        String unit,
        Within within,
        String why,
        String publication,
        String edition,
        String place,
        Confidence confidence) {

    public static final String SIZE = "size";

    static PublishedCase of(DataRow row) {
        return new PublishedCase(
                row.text("id"),
                row.text("title"),
                row.text("given"),
                row.text("work"),
                new Given(row),
                row.words("published"),
                row.text("unit"),
                Within.of(row),
                row.text("why"),
                row.text("publication"),
                row.text("edition"),
                row.text("place"),
                row.choice("confidence", Confidence.class));
    }

    /** Whether the answers are pipe sizes, which are the same or not. */
    public boolean isSizes() {
        return unit.equals(SIZE);
    }

    /** Publication, edition and place in one line. */
    public String source() {
        return publication + (edition.isEmpty() ? "" : ", " + edition) + (place.isEmpty() ? "" : ", " + place);
    }
}
