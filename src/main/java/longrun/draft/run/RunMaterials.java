package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.MaterialWords;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;

/** The materials of a run: that of the run, and another in any line that has its own. */
final class RunMaterials {

    /** The entry for the material of the run, kept beside the plan; it is not saved in a plan file. */
    static final String PIPE = "pipe";

    static final String MATERIAL = "material";

    private static final String SECTIONS = "sections";

    private RunMaterials() {}

    /** The material of the run; where it is not kept, that of most lines. */
    static Pipe ofRun(ObjectNode plan) {
        return Pipe.of(plan.path(PIPE).asText()).orElseGet(() -> ofMost(plan));
    }

    /** The material of most lines; of two equally frequent the first. */
    private static Pipe ofMost(ObjectNode plan) {
        Map<Pipe, Integer> lines = new LinkedHashMap<>();
        plan.path(SECTIONS).forEach(s -> lines.merge(ofLine(s), 1, Integer::sum));
        Pipe most = lines.keySet().stream().findFirst().orElse(Pipe.STEEL);
        for (Map.Entry<Pipe, Integer> each : lines.entrySet()) {
            if (each.getValue() > lines.getOrDefault(most, 0)) {
                most = each.getKey();
            }
        }
        return most;
    }

    /** Gives the run the material of most lines where no line has the run's own. */
    static void settle(ObjectNode plan) {
        JsonNode sections = plan.path(SECTIONS);
        boolean any = sections.isEmpty();
        for (JsonNode s : sections) {
            any |= ofLine(s) == ofRun(plan);
        }
        if (!any) {
            plan.put(PIPE, ofMost(plan).written());
        }
    }

    static Pipe ofLine(JsonNode section) {
        return Pipe.of(section.path(MATERIAL).asText()).orElse(Pipe.STEEL);
    }

    /** Gives another material to the run and to every line that had the run's. */
    static void setRun(ObjectNode plan, Pipe pipe) {
        Pipe was = ofRun(plan);
        plan.put(PIPE, pipe.written());
        ArrayNode sections = plan.withArray(SECTIONS);
        sections.forEach(s -> {
            if (ofLine(s) == was) {
                ((ObjectNode) s).put(MATERIAL, pipe.written());
            }
        });
    }

    /**
     * Stores a length as typed, and the material named with it ("csst 12 ft"). A material is taken only once the whole entry
     * is understood, so that a half-typed word changes nothing.
     */
    static void setLength(ObjectNode section, String text) {
        if (text.isBlank()) {
            section.remove("legs");
            return;
        }
        MaterialWords words = MaterialWords.of(text);
        Optional<Pipe> pipe = words.material().flatMap(m -> Pipe.of(m.written()));
        boolean understood = pipe.isPresent() && isLength(words.rest());
        section.putArray("legs").add(understood ? words.rest() : text);
        if (understood) {
            section.put(MATERIAL, pipe.get().written());
        }
    }

    private static boolean isLength(String text) {
        try {
            Measure.LENGTH.read(text);
            return true;
        } catch (NotAQuantity e) {
            return false;
        }
    }

    /** Whether every line that both have is of the same material, so that the sizes of one may be shown for the other. */
    static boolean areAlike(RunDraft one, RunDraft other) {
        Map<String, Pipe> pipes = new HashMap<>();
        one.lines().forEach(l -> pipes.put(l.id(), l.pipe()));
        return other.lines().stream().allMatch(l -> l.pipe() == pipes.getOrDefault(l.id(), l.pipe()));
    }
}
