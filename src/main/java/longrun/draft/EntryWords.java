package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Entries of a plan as short words, such as "same room: yes". */
public final class EntryWords {

    private EntryWords() {}

    /** Every entry below a place as its name and value, wherever it stands. */
    public static List<String> listIn(String name, JsonNode node) {
        List<String> all = new ArrayList<>();
        collect(name, node, all);
        return all;
    }

    private static void collect(String name, JsonNode node, List<String> all) {
        if (node.isObject()) {
            node.properties().forEach(e -> collect(e.getKey(), e.getValue(), all));
        } else if (node.isArray()) {
            node.forEach(each -> collect(name, each, all));
        } else {
            all.add(name + ": " + node.asText());
        }
    }

    public static String spoken(String entry) {
        return entry.replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .replace(": true", ": yes")
                .replace(": false", ": no")
                .replace("btu/h", "Btu/h")
                .replace("degf", "degF")
                .replace("part: ", "")
                .replace("accessible: ", "can be reached: ")
                .replaceAll("(?<=[a-z])-(?=[a-z])", " ");
    }
}
