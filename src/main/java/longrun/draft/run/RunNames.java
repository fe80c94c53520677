package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** The letters of the lines, given in order: A, B, C and so on. */
public final class RunNames {

    private RunNames() {}

    /** The letter of the line at an index: A to Z, then AA. */
    public static String letter(int place) {
        String last = String.valueOf((char) ('A' + place % 26));
        return place < 26 ? last : letter(place / 26 - 1) + last;
    }

    /** The next letter that no line has. */
    static String next(ArrayNode sections) {
        for (int i = sections.size(); ; i++) {
            String wanted = letter(i);
            boolean free = true;
            for (JsonNode s : sections) {
                free &= !s.path("id").asText().equals(wanted);
            }
            if (free) {
                return wanted;
            }
        }
    }

    /** Letters all lines again, in order. */
    static void rename(ObjectNode p) {
        Map<String, String> names = new LinkedHashMap<>();
        ArrayNode sections = p.withArray("sections");
        for (int i = 0; i < sections.size(); i++) {
            names.put(sections.get(i).path("id").asText(), letter(i));
        }
        for (JsonNode s : sections) {
            put(s, "id", names);
            put(s, "from", names);
        }
        for (JsonNode a : p.path("appliances")) {
            put(a, "fedBy", names);
            if (a.path("id").asText().startsWith("at-")) {
                ((ObjectNode) a).put("id", "at-" + a.path("fedBy").asText());
            }
        }
        for (JsonNode r : p.path("regulators")) {
            if (r.has("fedBy")) {
                put(r, "fedBy", names);
            }
        }
    }

    private static void put(JsonNode node, String field, Map<String, String> names) {
        String old = node.path(field).asText();
        ((ObjectNode) node).put(field, names.getOrDefault(old, old));
    }

    /** Lets the lines that leave one regulator or line leave another. */
    static void refer(ObjectNode p, String old, String other) {
        for (JsonNode s : p.path("sections")) {
            if (s.path("from").asText().equals(old)) {
                ((ObjectNode) s).put("from", other);
            }
        }
    }

    /**
     * Puts the line regulator at the end of the first line. Where the first line already feeds an appliance, a line to the
     * regulator is inserted before it.
     */
    static void placeLineRegulator(ObjectNode p) {
        ArrayNode sections = p.withArray("sections");
        if (sections.isEmpty() || p.path("regulators").path(1).has("fedBy")) {
            return;
        }
        String first = sections.get(0).path("id").asText();
        boolean feedsAppliance = false;
        for (JsonNode a : p.path("appliances")) {
            feedsAppliance |= a.path("fedBy").asText().equals(first)
                    && !a.path("input").asText("").isBlank();
        }
        ObjectNode regulator = (ObjectNode) p.path("regulators").path(1);
        if (!feedsAppliance) {
            refer(p, first, PressureStart.LINE_REGULATOR);
            regulator.put("fedBy", first);
            refer(p, PressureStart.FIRST_REGULATOR, PressureStart.LINE_REGULATOR);
            ((ObjectNode) sections.get(0)).put("from", PressureStart.FIRST_REGULATOR);
            return;
        }
        ObjectNode before = JsonNodeFactory.instance.objectNode();
        String id = next(sections);
        before.put("id", id).put("name", "to the line regulator").put("from", PressureStart.FIRST_REGULATOR);
        before.set("material", sections.get(0).path("material"));
        before.set("setting", sections.get(0).path("setting"));
        refer(p, PressureStart.FIRST_REGULATOR, PressureStart.LINE_REGULATOR);
        sections.insert(0, before);
        regulator.put("fedBy", id);
        rename(p);
    }
}
