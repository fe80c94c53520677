package longrun.rules.limit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.finding.Citation;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.origin.DataFault;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;

/** The thresholds of all rules, read once from {@code data/rules/thresholds.csv}. A wrong row is named by its line. */
public final class Thresholds {

    private static final String FILE = "rules/thresholds.csv";
    private static final Thresholds BUILT_IN = read(DataFile.read(FILE));

    private final Map<String, List<Threshold>> byRule;

    private Thresholds(Map<String, List<Threshold>> byRule) {
        this.byRule = byRule;
    }

    /** The thresholds the program comes with. */
    public static Thresholds builtIn() {
        return BUILT_IN;
    }

    /** Every threshold of a rule, in the order of the file. */
    public List<Threshold> listOf(String rule) {
        return byRule.getOrDefault(rule, List.of());
    }

    /** Every threshold there is. */
    public List<Threshold> listAll() {
        return byRule.values().stream().flatMap(List::stream).toList();
    }

    /**
     * What a rule requires under a code.
     *
     * @throws IllegalArgumentException if the file holds no such row
     */
    public Threshold get(String rule, String variant, CodeProfile code) {
        return find(rule, variant, code)
                .orElseThrow(() -> new IllegalArgumentException(
                        FILE + " has no row for " + rule + " " + variant + " under " + code.written()));
    }

    public Optional<Threshold> find(String rule, String variant, CodeProfile code) {
        for (Threshold t : listOf(rule)) { // asked for at every place of every rule
            if (t.variant().equals(variant) && t.code().map(code::equals).orElse(true)) {
                return Optional.of(t);
            }
        }
        return Optional.empty();
    }

    /**
     * Reads a table of thresholds.
     *
     * @throws DataFault naming the cell that is wrong
     */
    public static Thresholds read(DataFile file) {
        Map<String, List<Threshold>> byRule = new LinkedHashMap<>();
        for (DataRow row : file.rows()) {
            byRule.computeIfAbsent(row.text("rule"), r -> new ArrayList<>()).add(read(row));
        }
        return new Thresholds(byRule);
    }

    /** A limit is a length, a wire's size or a temperature; anything else is a slip in the file. */
    private static Optional<Length> length(DataRow row, String limit) {
        try {
            if (limit.endsWith(" AWG")) {
                Measure.WIRE.read(limit);
                return Optional.empty();
            }
            if (limit.endsWith(" degF")) {
                Measure.TEMPERATURE.read(limit);
                return Optional.empty();
            }
            return limit.isEmpty() ? Optional.empty() : Optional.of(Measure.LENGTH.read(limit));
        } catch (NotAQuantity e) {
            throw row.fault("limit", e.advice());
        }
    }

    private static Threshold read(DataRow row) {
        String limit = row.text("limit");
        return new Threshold(
                rule(row),
                row.text("variant"),
                row.text("code").equals("any") ? Optional.empty() : Optional.of(row.choice("code", CodeProfile.class)),
                row.choice("severity", Severity.class),
                row.choice("bound", Bound.class),
                length(row, limit),
                limit,
                row.text("required"),
                new Citation(row.text("reference"), row.text("edition"), row.choice("confidence", Confidence.class)),
                row.text("fact"));
    }

    private static RuleName rule(DataRow row) {
        try {
            return new RuleName(row.text("rule"));
        } catch (IllegalArgumentException e) {
            throw row.fault("rule", "'" + row.text("rule") + "' is not a rule name");
        }
    }
}
