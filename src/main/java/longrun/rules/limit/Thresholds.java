package longrun.rules.limit;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.finding.Citation;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Named;
import longrun.quantity.Length;
import longrun.quantity.Measure;

/** The thresholds of all rules, read once from {@code data/rules/thresholds.csv}. A wrong row is named by its line. */
public final class Thresholds {

    private static final String FILE = "rules/thresholds.csv";
    private static final Thresholds BUILT_IN = load();

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
        return listOf(rule).stream()
                .filter(t -> t.variant().equals(variant)
                        && t.code().map(code::equals).orElse(true))
                .findFirst();
    }

    private static Thresholds load() {
        try (Reader in = open(FILE)) {
            return read(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a table of thresholds.
     *
     * @throws IllegalStateException naming the line that is wrong
     */
    public static Thresholds read(Reader in) throws IOException {
        Map<String, List<Threshold>> byRule = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(in)) {
            for (NamedCsvRecord row : rows) {
                byRule.computeIfAbsent(row.getField("rule"), r -> new ArrayList<>())
                        .add(read(row));
            }
        }
        return new Thresholds(byRule);
    }

    /** A data file of the jar. */
    public static Reader open(String file) throws IOException {
        InputStream in = Thresholds.class.getResourceAsStream("/longrun/data/" + file);
        if (in == null) {
            throw new IOException("the data file " + file + " is not in the program");
        }
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    /** A limit is a length, a wire's size or a temperature; anything else is a slip in the file. */
    private static Optional<Length> length(String limit) {
        if (limit.endsWith(" AWG")) {
            Measure.WIRE.read(limit);
            return Optional.empty();
        }
        if (limit.endsWith(" degF")) {
            Measure.TEMPERATURE.read(limit);
            return Optional.empty();
        }
        return limit.isEmpty() ? Optional.empty() : Optional.of(Measure.LENGTH.read(limit));
    }

    private static Threshold read(NamedCsvRecord row) {
        try {
            String limit = row.getField("limit");
            String code = row.getField("code");
            return new Threshold(
                    new RuleName(row.getField("rule")),
                    row.getField("variant"),
                    code.equals("any") ? Optional.empty() : Optional.of(named(CodeProfile.values(), code)),
                    named(Severity.values(), row.getField("severity")),
                    named(Bound.values(), row.getField("bound")),
                    length(limit),
                    limit,
                    row.getField("required"),
                    new Citation(
                            row.getField("reference"),
                            row.getField("edition"),
                            named(Confidence.values(), row.getField("confidence"))),
                    row.getField("fact"));
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException(FILE + ":" + row.getStartingLineNumber() + ": " + e.getMessage(), e);
        }
    }

    public static <E extends Enum<E> & Named> E named(E[] values, String written) {
        for (E value : values) {
            if (value.written().equals(written)) {
                return value;
            }
        }
        throw new IllegalArgumentException("\"" + written.toLowerCase(Locale.ROOT) + "\" is not known here");
    }
}
