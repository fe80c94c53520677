package longrun.pressuretest;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import longrun.finding.Citation;
import longrun.origin.Confidence;
import longrun.origin.DataFile;

/**
 * A number of the test with its source, from {@code data/rules/pressure-test.csv}.
 *
 * @param what its name in that file
 * @param value in the unit the file gives
 * @param citation where it is printed
 */
public record TestFact(String what, double value, Citation citation) {

    private static final List<TestFact> ALL = DataFile.read("rules/pressure-test.csv").rows().stream()
            .map(r -> new TestFact(
                    r.text("what"),
                    r.number("value"),
                    new Citation(r.text("reference"), r.text("edition"), confidence(r.text("confidence")))))
            .toList();

    /**
     * A number by its name.
     *
     * @throws IllegalStateException if the file has none of that name
     */
    public static TestFact get(String what) {
        return ALL.stream()
                .filter(f -> f.what.equals(what))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("pressure-test.csv has no " + what));
    }

    /** Publication and section, with what is held from memory said to be so. */
    public String source() {
        return citation.reference()
                + (citation.edition().isEmpty() ? "" : ", " + citation.edition())
                + (citation.confidence() == Confidence.MEMORY ? ", held from memory" : "");
    }

    private static Confidence confidence(String word) {
        return Arrays.stream(Confidence.values())
                .filter(c -> c.written().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("pressure-test.csv: no such confidence: " + word));
    }
}
