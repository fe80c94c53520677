package longrun.rules.limit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
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
        Map<String, DataRow> coverage = new HashMap<>();
        for (DataRow row : DataFile.read("rules/coverage.csv").rows()) {
            coverage.put(row.text("fact"), row);
        }
        return DataFile.read("rules/facts.csv").rows().stream()
                .map(row -> fact(row, coverage.get(row.text("id"))))
                .toList();
    }

    private static RuleFact fact(DataRow row, @Nullable DataRow covered) {
        String id = row.text("id");
        if (covered == null) {
            throw row.fault("id", "coverage.csv says nothing of " + id);
        }
        return new RuleFact(
                id,
                row.text("topic"),
                row.text("statement"),
                row.text("numbers"),
                row.text("where"),
                row.choice("confidence", Confidence.class),
                covered.choice("how", RuleFact.Use.class),
                covered.words("rules"),
                covered.text("why"));
    }
}
