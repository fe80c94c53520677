package longrun.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.Fact;
import longrun.plan.PlanPath;

/**
 * What the entries of a plan are called in a sentence, from {@code data/words/entries.csv} and, for entries that only an
 * appliance has, {@code data/words/appliance.csv}. No JSON name is shown to a person.
 */
public final class EntryName {

    private static final Pattern HYPHEN = Pattern.compile("(?<=[a-z])-(?=[a-z])");
    private static final Map<String, String> ALL = load();

    private EntryName() {}

    private static Map<String, String> load() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String file : List.of("words/entries.csv", "words/appliance.csv")) {
            for (DataRow row : DataFile.read(file).rows()) {
                String entry = row.text("entry");
                String called = row.text("called");
                if (called.isEmpty() && !all.containsKey(entry)) {
                    throw row.fault("called", entry + " is called nothing");
                }
                if (!called.isEmpty() && all.put(entry, called) != null) {
                    throw row.fault("entry", entry + " appears twice");
                }
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /** What the entry at this path is called; its JSON name where it is no entry of a plan. */
    public static String of(PlanPath place) {
        String entry = place.entry();
        return ALL.getOrDefault(place.holder() + "/" + entry, of(entry));
    }

    /**
     * What an entry is called.
     *
     * @param entry its JSON name; {@code holder/entry} where the same name means two things
     */
    public static String of(String entry) {
        return ALL.getOrDefault(entry, entry);
    }

    /**
     * An entry with its value in parentheses, to stand after what was found: {@code (tracer wire: none)}.
     *
     * @param entry as for {@link #of(String)}
     * @param written the value as a plan writes it
     */
    public static String entered(String entry, String written) {
        return "(" + of(entry) + ": " + spoken(written) + ")";
    }

    /** As {@link #entered(String, String)}, with the value as the plan has it. */
    public static String entered(String entry, Fact<?> fact) {
        return entered(entry, fact.findText().orElse(""));
    }

    /** A value as a sentence has it: yes or no for true or false, and choices without their hyphens. */
    public static String spoken(String written) {
        return switch (written) {
            case "true" -> "yes";
            case "false" -> "no";
            default -> HYPHEN.matcher(written).replaceAll(" ");
        };
    }
}
