package longrun.rules.limit;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longrun.origin.Confidence;
import org.jspecify.annotations.Nullable;

/** The facts of the rules, read once from {@code data/rules/facts.csv} and {@code coverage.csv}. */
public final class RuleFacts {

    private static final List<RuleFact> ALL = load();

    private RuleFacts() {}

    /** Every fact, in the order of its section. */
    public static List<RuleFact> all() {
        return ALL;
    }

    /** The facts a rule checks or shows. */
    public static List<RuleFact> of(String rule) {
        return ALL.stream().filter(f -> f.rules().contains(rule)).toList();
    }

    private static List<RuleFact> load() {
        Map<String, NamedCsvRecord> coverage = new HashMap<>();
        for (NamedCsvRecord row : rows("rules/coverage.csv")) {
            coverage.put(row.getField("fact"), row);
        }
        return rows("rules/facts.csv").stream()
                .map(row -> fact(row, coverage.get(row.getField("id"))))
                .toList();
    }

    private static RuleFact fact(NamedCsvRecord row, @Nullable NamedCsvRecord covered) {
        String id = row.getField("id");
        if (covered == null) {
            throw new IllegalStateException("rules/coverage.csv says nothing of " + id);
        }
        return new RuleFact(
                id,
                row.getField("topic"),
                row.getField("statement"),
                row.getField("numbers"),
                row.getField("where"),
                Thresholds.named(Confidence.values(), row.getField("confidence")),
                Thresholds.named(RuleFact.Use.values(), covered.getField("how")),
                List.of(covered.getField("rules").split(" ")),
                covered.getField("why"));
    }

    private static List<NamedCsvRecord> rows(String file) {
        try (Reader in = Thresholds.open(file);
                CsvReader<NamedCsvRecord> rows = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(in)) {
            return rows.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
