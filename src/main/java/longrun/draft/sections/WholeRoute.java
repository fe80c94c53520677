package longrun.draft.sections;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.plan.choice.Material;

/**
 * Entries made once for the whole route: material, place, joints. The plan holds them section by section; the value of most
 * sections is that of the route, and sections with another value are its exceptions.
 */
public final class WholeRoute {

    public static final String MATERIAL = "material";
    public static final String SETTING = "setting";
    public static final String JOINTS = "joints";

    private final JsonNode sections;

    public WholeRoute(DraftValue draft) {
        this.sections = draft.node().path("sections");
    }

    /** The value of most sections, the first of equally frequent ones; blank where none is entered. */
    public String common(String entry) {
        Map<String, Integer> count = new LinkedHashMap<>();
        for (JsonNode s : sections) {
            String has = has(s, entry);
            if (!has.isBlank() && holds(s, entry)) {
                count.merge(has, 1, Integer::sum);
            }
        }
        int most = count.values().stream().mapToInt(i -> i).max().orElse(0);
        return count.entrySet().stream()
                .filter(e -> e.getValue() == most)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    /** The ids of the sections with another value than the route. */
    public List<String> exceptions(String entry) {
        String common = common(entry);
        return listIds(entry, has -> !has.isBlank() && !has.equals(common));
    }

    /** The ids of the sections without a value. */
    public List<String> without(String entry) {
        return listIds(entry, String::isBlank);
    }

    private List<String> listIds(String entry, java.util.function.Predicate<String> wanted) {
        List<String> out = new ArrayList<>();
        for (JsonNode s : sections) {
            if (holds(s, entry) && wanted.test(has(s, entry))) {
                out.add(s.path("id").asText(""));
            }
        }
        return out;
    }

    /** Whether any section needs its joints entered: those of copper do. */
    public boolean asksJoints() {
        for (JsonNode s : sections) {
            if (holds(s, JOINTS)) {
                return true;
            }
        }
        return false;
    }

    /** Sets a value for the whole route: sections with the route's old value, or none, take it; exceptions keep theirs. */
    public static void set(DraftEdit edit, String entry, String value) {
        ObjectNode draft = edit.root();
        String common = new WholeRoute(edit.whole()).common(entry);
        List<Integer> follow = new ArrayList<>();
        int index = 0;
        for (JsonNode s : draft.path("sections")) {
            String has = has(s, entry);
            if (s instanceof ObjectNode && holds(s, entry) && (has.isBlank() || has.equals(common))) {
                follow.add(index);
            }
            index++;
        }
        for (int i : follow) {
            if (entry.equals(JOINTS)) {
                ObjectNode s = RouteDraft.section(draft, i);
                s.remove(JOINTS);
                if (!value.isBlank()) {
                    s.putArray(JOINTS).add(value);
                }
            } else {
                RouteDraft.put(edit, i, entry, value);
            }
        }
    }

    private static boolean holds(JsonNode section, String entry) {
        return !entry.equals(JOINTS) || section.path(MATERIAL).asText("").equals(Material.COPPER.written());
    }

    private static String has(JsonNode section, String entry) {
        JsonNode has = section.path(entry);
        if (has.isArray()) {
            List<String> each = new ArrayList<>();
            has.forEach(e -> each.add(e.asText("")));
            return String.join(", ", each);
        }
        return has.asText("");
    }
}
