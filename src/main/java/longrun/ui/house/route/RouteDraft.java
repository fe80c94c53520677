package longrun.ui.house.route;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longrun.plan.ApplianceKind;

/** The sections of a draft: read as lines, and changed line by line. */
final class RouteDraft {

    static final String CAP = "cap";

    private RouteDraft() {}

    static List<RouteLine> lines(ObjectNode draft) {
        List<RouteLine> out = new ArrayList<>();
        JsonNode sections = draft.path("sections");
        for (int i = 0; i < sections.size(); i++) {
            out.add(line(draft, i, sections.get(i)));
        }
        return out;
    }

    private static RouteLine line(ObjectNode draft, int i, JsonNode s) {
        String id = s.path("id").asText("");
        List<String> legs = new ArrayList<>();
        if (s.path("legs").isArray()) {
            s.path("legs").forEach(l -> legs.add(l.asText("")));
        } else if (!s.path("legs").asText("").isBlank()) {
            legs.add(s.path("legs").asText());
        }
        List<String> branches = new ArrayList<>();
        draft.path("sections").forEach(o -> {
            if (!id.isEmpty() && o.path("from").asText("").equals(id)) {
                branches.add(o.path("id").asText(""));
            }
        });
        return new RouteLine(
                i,
                id,
                s.path("from").asText(""),
                legs,
                s.path("material").asText(""),
                s.path("setting").asText(""),
                s.path("rough").asBoolean(false),
                s.path("chosenSize").asText(""),
                s.path("installedSize").asText(""),
                s.path("reserve").asText(""),
                s.path("table").asText(""),
                feeds(draft, id, s),
                branches);
    }

    private static String feeds(ObjectNode draft, String id, JsonNode section) {
        for (JsonNode a : draft.path("appliances")) {
            if (!id.isEmpty() && a.path("fedBy").asText("").equals(id)) {
                return "app:" + a.path("id").asText("");
            }
        }
        for (JsonNode r : draft.path("regulators")) {
            if (!id.isEmpty() && r.path("fedBy").asText("").equals(id)) {
                return "reg:" + r.path("id").asText("");
            }
        }
        return section.path("capped").asBoolean(false) ? CAP : "";
    }

    /** What a line may leave: regulators, and lines that feed nothing else and do not hang on it. */
    static Map<String, String> mayLeave(ObjectNode draft, int index) {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "\u2026");
        draft.path("regulators")
                .forEach(r -> out.put(r.path("id").asText(), r.path("id").asText()));
        List<RouteLine> lines = lines(draft);
        Set<String> below = new HashSet<>();
        if (index < lines.size()) {
            below.add(lines.get(index).id());
            for (int round = 0; round < lines.size(); round++) {
                boolean more = false;
                for (RouteLine l : lines) {
                    more |= below.contains(l.from()) && below.add(l.id());
                }
                if (!more) {
                    break;
                }
            }
        }
        for (RouteLine l : lines) {
            if (!below.contains(l.id()) && l.feeds().isEmpty()) {
                out.put(l.id(), l.id());
            }
        }
        return out;
    }

    /** What may hang on a line's end. */
    static Map<String, String> mayFeed(ObjectNode draft, List<String> branches) {
        Map<String, String> out = new LinkedHashMap<>();
        String on = branches.isEmpty()
                ? "branches, or not said"
                : branches.size() > 3 ? branches.size() + " sections" : "branch: " + together(branches);
        out.put("", on);
        draft.path("appliances").forEach(a -> out.put("app:" + a.path("id").asText(), applianceName(a)));
        draft.path("regulators").forEach(r -> {
            if (!r.path("fedBy").asText("").equals("tank")) {
                String name = r.path("name").asText("");
                String id = r.path("id").asText();
                out.put("reg:" + id, name.isBlank() ? "regulator " + id : name + ", " + id);
            }
        });
        out.put(CAP, "capped");
        return out;
    }

    static String applianceName(JsonNode a) {
        String name = a.path("name").asText("");
        if (!name.isBlank()) {
            return name;
        }
        String kind = a.path("kind").asText("");
        for (ApplianceKind k : ApplianceKind.values()) {
            if (k.written().equals(kind) && k != ApplianceKind.OTHER) {
                return k.label();
            }
        }
        return a.path("id").asText();
    }

    static String together(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** The section at an index, begun with what the line above suggests where it is not there yet. */
    static ObjectNode section(ObjectNode draft, int index) {
        ArrayNode sections = draft.withArray("sections");
        if (index < sections.size() && sections.get(index) instanceof ObjectNode there) {
            return there;
        }
        List<RouteLine> lines = lines(draft);
        ObjectNode made = sections.addObject();
        String from = suggestedFrom(draft, lines);
        made.put("id", name(draft, from));
        if (!from.isEmpty()) {
            made.put("from", from);
        }
        if (!lines.isEmpty()) {
            RouteLine above = lines.get(lines.size() - 1);
            boolean indoorsNow =
                    above.feeds().startsWith("reg:") && above.setting().equals("underground");
            if (!above.material().isEmpty() && !indoorsNow) {
                made.put("material", above.material());
                if (!above.table().isEmpty()) {
                    made.put("table", above.table());
                }
            }
            if (!above.setting().isEmpty() && !indoorsNow) {
                made.put("setting", above.setting());
            }
        }
        return made;
    }

    /** Where the next line most likely leaves: what the last feeds, the last itself, or what the last leaves. */
    static String suggestedFrom(ObjectNode draft, List<RouteLine> lines) {
        if (!lines.isEmpty()) {
            RouteLine last = lines.get(lines.size() - 1);
            if (last.feeds().startsWith("reg:")) {
                return last.feeds().substring(4);
            }
            return last.feeds().isEmpty() ? last.id() : last.from();
        }
        String first = "";
        for (JsonNode r : draft.path("regulators")) {
            first = first.isEmpty() || r.path("fedBy").asText("").equals("tank")
                    ? r.path("id").asText("")
                    : first;
        }
        return first;
    }

    /** A letter that nothing in the house has yet; Y and a number on the pipe from the first stage. */
    static String name(ObjectNode draft, String from) {
        Set<String> taken = new HashSet<>();
        for (String list : List.of("regulators", "sections", "rooms", "appliances")) {
            draft.path(list).forEach(n -> taken.add(n.path("id").asText("")));
        }
        boolean yard = false;
        for (JsonNode r : draft.path("regulators")) {
            yard |= r.path("id").asText("").equals(from)
                    && r.path("kind").asText("").equals("first-stage");
        }
        for (int n = 0; ; n++) {
            String letter = String.valueOf((char) ('A' + n % 26));
            String id = yard ? "Y" + (n + 1) : n < 26 ? letter : letter + (n / 26 + 1);
            if (!taken.contains(id)) {
                return id;
            }
        }
    }

    static void legs(ObjectNode draft, int index, List<String> legs) {
        ObjectNode s = section(draft, index);
        if (legs.isEmpty()) {
            s.remove("legs");
        } else {
            ArrayNode list = s.putArray("legs");
            legs.forEach(list::add);
        }
    }

    /** Writes one entry of a line; blank takes it away. */
    static void put(ObjectNode draft, int index, String entry, String value) {
        ObjectNode s = section(draft, index);
        if (value.isBlank()) {
            s.remove(entry);
        } else {
            s.put(entry, value);
        }
        if (entry.equals("material") || entry.equals("setting")) {
            spread(draft, s.path("id").asText(), entry, value);
        }
        if (entry.equals("material") && !TubingDraft.isTubing(value)) {
            s.remove("table"); // a maker's table is for corrugated tubing
        }
    }

    /** The lines beyond that say nothing of their own take the same; what is entered already stays. */
    private static void spread(ObjectNode draft, String id, String entry, String value) {
        for (JsonNode beyond : draft.path("sections")) {
            if (beyond.path("from").asText("").equals(id)
                    && beyond.path(entry).asText("").isBlank()
                    && !value.isBlank()) {
                ((ObjectNode) beyond).put(entry, value);
                spread(draft, beyond.path("id").asText(), entry, value);
            }
        }
    }

    /** Hangs something on a line's end, taking it from where it hung before and freeing what hung there. */
    static void feed(ObjectNode draft, int index, String feeds) {
        ObjectNode s = section(draft, index);
        String id = s.path("id").asText();
        for (String list : List.of("appliances", "regulators")) {
            draft.path(list).forEach(n -> {
                if (n.path("fedBy").asText("").equals(id)) {
                    ((ObjectNode) n).remove("fedBy");
                }
                String key = (list.equals("appliances") ? "app:" : "reg:")
                        + n.path("id").asText();
                if (key.equals(feeds)) {
                    ((ObjectNode) n).put("fedBy", id);
                }
            });
        }
        if (feeds.equals(CAP)) {
            s.put("capped", true);
        } else {
            s.remove("capped");
            s.remove("reserve");
        }
    }

    /** Takes a line away; what left it leaves what it left, and what hung on it hangs on nothing. */
    static void remove(ObjectNode draft, int index) {
        if (!(draft.path("sections") instanceof ArrayNode sections) || index >= sections.size()) {
            return;
        }
        String id = sections.get(index).path("id").asText("");
        String from = sections.get(index).path("from").asText("");
        feed(draft, index, "");
        sections.remove(index);
        sections.forEach(n -> {
            if (n.path("from").asText("").equals(id) && n instanceof ObjectNode o) {
                if (from.isEmpty()) {
                    o.remove("from");
                } else {
                    o.put("from", from);
                }
            }
        });
    }
}
