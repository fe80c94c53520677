package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lines of a run in its plan document: sections, and an appliance at each end. */
final class RunLines {

    private static final String NAME = "name";
    private static final String FROM = "from";
    private static final String SECTIONS = "sections";
    private static final String APPLIANCES = "appliances";
    private static final String FED_BY = "fedBy";
    private static final String INPUT = "input";

    private RunLines() {}

    /** The lines in their order, with what each feeds. */
    static List<Line> of(ObjectNode plan) {
        Map<String, List<String>> feeds = new LinkedHashMap<>();
        Map<String, String> inputs = new LinkedHashMap<>();
        for (JsonNode s : plan.path(SECTIONS)) {
            feeds.computeIfAbsent(s.path(FROM).asText(), k -> new ArrayList<>())
                    .add(s.path("id").asText());
        }
        for (JsonNode r : plan.path("regulators")) {
            if (r.has(FED_BY)) {
                feeds.computeIfAbsent(r.path(FED_BY).asText(), k -> new ArrayList<>())
                        .add(r.path("id").asText());
            }
        }
        for (JsonNode a : plan.path(APPLIANCES)) {
            inputs.put(a.path(FED_BY).asText(), a.path(INPUT).asText(""));
        }
        List<Line> lines = new ArrayList<>();
        for (JsonNode s : plan.path(SECTIONS)) {
            String id = s.path("id").asText();
            lines.add(new Line(
                    id,
                    s.path(NAME).asText(""),
                    s.path(FROM).asText(),
                    s.path("legs").path(0).asText(""),
                    inputs.getOrDefault(id, ""),
                    RunMaterials.ofLine(s),
                    List.copyOf(feeds.getOrDefault(id, List.of()))));
        }
        return List.copyOf(lines);
    }

    /** Adds a line of the same material; it leaves the last line that has no appliance of its own, or the regulator. */
    static void add(ObjectNode p) {
        ArrayNode sections = p.withArray(SECTIONS);
        String from = PressureStart.FIRST_REGULATOR;
        if (p.path("regulators").size() > 1 && !sections.isEmpty()) {
            from = PressureStart.LINE_REGULATOR;
        }
        for (Line line : of(p)) {
            boolean lineRegulator = line.feeds().contains(PressureStart.LINE_REGULATOR);
            if (!lineRegulator
                    && line.input().isBlank()
                    && (line.branches() || !line.length().isBlank())) {
                from = line.id();
            }
        }
        if (sections.size() == 1
                && from.equals(PressureStart.FIRST_REGULATOR)
                && inputOf(p, first(sections)).isBlank()) {
            from = first(sections);
        }
        String above = sections.path(sections.size() - 1)
                .path(RunMaterials.MATERIAL)
                .asText(RunMaterials.ofRun(p).written());
        String letter = RunNames.next(sections);
        sections.addObject().put("id", letter).put(NAME, "").put(FROM, from).put(RunMaterials.MATERIAL, above);
        if (p.path("regulators").size() > 1) {
            RunNames.placeLineRegulator(p);
        }
    }

    private static String first(ArrayNode sections) {
        return sections.path(0).path("id").asText();
    }

    private static String inputOf(ObjectNode p, String id) {
        for (JsonNode a : p.path(APPLIANCES)) {
            if (a.path(FED_BY).asText().equals(id)) {
                return a.path(INPUT).asText("");
            }
        }
        return "";
    }

    /** Stores the input of what a line feeds; a blank text removes it. */
    static void setInput(ObjectNode p, String id, String text) {
        for (JsonNode a : p.path(APPLIANCES)) {
            if (a.path(FED_BY).asText().equals(id)) {
                if (text.isBlank()) {
                    ((ObjectNode) a).remove(INPUT);
                } else {
                    ((ObjectNode) a).put(INPUT, text);
                }
                return;
            }
        }
        if (!text.isBlank()) {
            appliance(p, id).put(INPUT, text);
        }
    }

    /** Adds an appliance at the end of a line. */
    static ObjectNode appliance(ObjectNode p, String id) {
        return p.withArray(APPLIANCES)
                .addObject()
                .put("id", "at-" + id)
                .put("gas", "propane")
                .put(FED_BY, id);
    }

    static void removeAppliance(ObjectNode p, String id) {
        ArrayNode all = p.withArray(APPLIANCES);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).path(FED_BY).asText().equals(id)) {
                all.remove(i);
            }
        }
    }

    /** Removes the lines at the end in which nothing is typed. */
    static void dropBlankEnd(ObjectNode p) {
        List<Line> lines = of(p);
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line last = lines.get(i);
            if (!last.isBlank() || last.branches()) {
                return;
            }
            p.withArray(SECTIONS).remove(i);
            removeAppliance(p, last.id());
        }
    }
}
