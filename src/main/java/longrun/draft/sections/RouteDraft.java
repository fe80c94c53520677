package longrun.draft.sections;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.words.UnitSystem;

/** The sections of a draft, changed line by line; {@link RouteLines} reads them. */
public final class RouteDraft {

    /** The value of {@link RouteLine#feeds()} for a capped end. */
    public static final String CAP = "cap";

    private RouteDraft() {}

    /** The section at an index; where there is none yet, a new one that takes over what the line above suggests. */
    static ObjectNode section(ObjectNode draft, int index) {
        if (!draft.path("sections").isArray()) {
            draft.putArray("sections"); // replaces what is not a list; undo brings it back
        }
        ArrayNode sections = draft.withArray("sections");
        if (index < sections.size() && sections.get(index) instanceof ObjectNode there) {
            return there;
        }
        RouteLine next = new RouteLines(DraftValue.of(draft)).next();
        ObjectNode made = sections.addObject();
        made.put("id", next.id());
        putIfSaid(made, "from", next.from());
        putIfSaid(made, "material", next.material());
        putIfSaid(made, "table", next.table());
        putIfSaid(made, "setting", next.setting());
        return made;
    }

    private static void putIfSaid(ObjectNode section, String entry, String value) {
        if (!value.isEmpty()) {
            section.put(entry, value);
        }
    }

    /**
     * Stores legs as typed, and the material named with them ("csst up 4, north 6"). A material is taken only once the whole
     * entry is understood, so that a half-typed word changes nothing.
     */
    public static void legs(DraftEdit edit, int index, String typed, UnitSystem units) {
        MaterialWords words = MaterialWords.of(typed);
        List<String> legs = LegsText.stored(words.rest(), units);
        boolean named = words.material().isPresent() && LegsText.feet(legs).isPresent();
        legs(edit.root(), index, named ? legs : LegsText.stored(typed, units));
        if (named) {
            put(edit, index, "material", words.material().get().written());
        }
    }

    private static void legs(ObjectNode draft, int index, List<String> legs) {
        ObjectNode s = section(draft, index);
        if (legs.isEmpty()) {
            s.remove("legs");
        } else {
            ArrayNode list = s.putArray("legs");
            legs.forEach(list::add);
        }
    }

    /** Stores one entry of a line; a blank text removes it. */
    public static void put(DraftEdit edit, int index, String entry, String value) {
        ObjectNode draft = edit.root();
        ObjectNode s = section(draft, index);
        if (value.isBlank()) {
            s.remove(entry);
        } else if (entry.equals("ends") && !value.equals("none")) {
            ends(s.putArray(entry), value);
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

    /** Marks a length as estimated or as measured. */
    public static void rough(DraftEdit edit, int index, boolean rough) {
        ObjectNode s = section(edit.root(), index);
        if (rough) {
            s.put("rough", true);
        } else {
            s.remove("rough");
        }
    }

    /** Adds pasted sections, each with a new name. */
    public static void add(DraftEdit edit, List<PastedSection> pasted) {
        ObjectNode draft = edit.root();
        Map<String, String> named = new HashMap<>();
        for (PastedSection p : pasted) {
            int index = draft.path("sections").size();
            ObjectNode s = section(draft, index);
            named.put(p.id(), s.path("id").asText());
            putIfSaid(s, "from", named.getOrDefault(p.from(), p.from()));
            putIfSaid(s, "material", p.material());
            legs(draft, index, p.legs());
            if (!p.feeds().isEmpty()) {
                feed(draft, index, p.feeds());
            }
        }
    }

    /** One value is for both ends; two are one for each. */
    private static void ends(ArrayNode list, String value) {
        String[] each = value.split(", ", -1);
        list.add(each[0]).add(each[each.length - 1]);
    }

    /** Gives the value to the lines downstream that have none of their own. */
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

    /** Sets what is at the end of a line; it is removed from its old line, and what was here before is left without one. */
    public static void feed(DraftEdit edit, int index, String feeds) {
        feed(edit.root(), index, feeds);
    }

    private static void feed(ObjectNode draft, int index, String feeds) {
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

    /** Removes a line; lines that left it leave what it left, and what it fed is fed by nothing. */
    public static void remove(DraftEdit edit, int index) {
        ObjectNode draft = edit.root();
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
