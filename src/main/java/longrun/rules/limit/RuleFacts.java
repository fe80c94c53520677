package longrun.rules.limit;

import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.DataFile;

/** The facts of the rules, read once from {@code data/rules/facts.csv}, each with what becomes of it. */
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
        return DataFile.read("rules/facts.csv").rows().stream()
                .map(row -> new RuleFact(
                        row.text("id"),
                        row.text("topic"),
                        row.text("statement"),
                        row.text("numbers"),
                        row.text("where"),
                        row.choice("confidence", Confidence.class),
                        row.choice("how", RuleFact.Use.class),
                        row.words("rules"),
                        row.text("why")))
                .toList();
    }
}
