package longrun.draft.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import longrun.finding.EntryName;

/** Entries of a plan in short words, such as "same room: yes". */
public final class EntryWords {

    private EntryWords() {}

    /** Every entry below a value, at any depth; a part is given by its kind alone. */
    public static List<String> listIn(String name, DraftValue entered) {
        List<String> all = new ArrayList<>();
        collect(name, entered.node(), all);
        return all;
    }

    private static void collect(String name, JsonNode node, List<String> all) {
        if (node.isObject()) {
            node.properties().forEach(e -> collect(e.getKey(), e.getValue(), all));
        } else if (node.isArray()) {
            node.forEach(each -> collect(name, each, all));
        } else {
            all.add(words(name, node.asText()));
        }
    }

    private static String words(String name, String value) {
        if (name.equals("seen") || name.equals("assumed")) {
            return value.equals("true") == name.equals("seen") ? "seen" : "assumed, not seen";
        }
        String spoken = EntryName.spoken(value);
        return name.equals("part") ? spoken : EntryName.of(name) + ": " + spoken;
    }
}
