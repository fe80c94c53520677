package longrun.checked.published;

import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.DataRow;

/**
 * A case whose answer is published.
 *
 * @param id the id used in tests and links
 * @param title what is worked out
 * @param given the input, in words
 * @param work the kind of computation that answers it
 * @param input the same input, for that computation
 * @param published the published answers, in order
 * @param unit the unit of the answers; {@code size} where they are sizes
 * @param tolerance how far the program's figures may be from them
 * @param why the reason for that tolerance, and remarks on the print
 * @param publication the publication
 * @param edition the edition; blank where it has none
 * @param place the table, section or page; blank where it is not known
 * @param confidence how sure it is that the publication says this
 */
public record PublishedCase(
        String id,
        String title,
        String given,
        String work,
        CaseInput input,
        List<String> published,
        String unit,
        Tolerance tolerance,
        String why,
        String publication,
        String edition,
        String place,
        Confidence confidence) {

    /** The unit of answers that are pipe sizes. */
    public static final String SIZE = "size";

    static PublishedCase of(DataRow row) {
        return new PublishedCase(
                row.text("id"),
                row.text("title"),
                row.text("given"),
                row.text("work"),
                new CaseInput(row),
                row.words("published"),
                row.text("unit"),
                Tolerance.of(row),
                row.text("why"),
                row.text("publication"),
                row.text("edition"),
                row.text("place"),
                row.choice("confidence", Confidence.class));
    }

    /** Whether the answers are pipe sizes, which can only be the same or differ. */
    public boolean isSizes() {
        return unit.equals(SIZE);
    }

    /** Publication, edition and place in one line. */
    public String source() {
        return publication + (edition.isEmpty() ? "" : ", " + edition) + (place.isEmpty() ? "" : ", " + place);
    }
}
