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
 * What the entries of a plan are called in a sentence ({@code data/words/entries.csv}; those only an appliance has,
 * {@code data/words/appliance.csv}); nobody is shown their names.
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
                    throw row.fault("entry", entry + " stands twice");
                }
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /** What the entry is called that stands in this place; as written where it is none of a plan's. */
    public static String of(PlanPath place) {
        String entry = place.entry();
        return ALL.getOrDefault(place.holder() + "/" + entry, of(entry));
    }

    /**
     * What an entry is called.
     *
     * @param entry its name in a plan; with what holds it before a stroke where one name means two things
     */
    public static String of(String entry) {
        return ALL.getOrDefault(entry, entry);
    }

    /**
     * An entry with what stands in it, put behind what was found: {@code (tracer wire: none)}.
     *
     * @param entry as for {@link #of(String)}
     * @param written the value as a plan writes it
     */
    public static String entered(String entry, String written) {
        return "(" + of(entry) + ": " + spoken(written) + ")";
    }

    /** As {@link #entered(String, String)}, what was written in a plan. */
    public static String entered(String entry, Fact<?> fact) {
        return entered(entry, fact.findText().orElse(""));
    }

    /** A value as it is said: yes and no, and choices without their hyphens. */
    public static String spoken(String written) {
        return switch (written) {
            case "true" -> "yes";
            case "false" -> "no";
            default -> HYPHEN.matcher(written).replaceAll(" ");
        };
    }
}
