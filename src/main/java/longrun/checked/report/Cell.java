package longrun.checked.report;

import java.util.List;
import java.util.Locale;

/**
 * A cell of a table of the report.
 *
 * @param text its text
 * @param under smaller lines beneath the text
 */
public record Cell(String text, List<String> under) {

    static Cell of(String text, String... under) {
        return new Cell(text, List.of(under).stream().filter(u -> !u.isEmpty()).toList());
    }

    static Cell of(int count) {
        return of(String.format(Locale.ROOT, "%,d", count));
    }
}
