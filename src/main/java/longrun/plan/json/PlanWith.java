package longrun.plan.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A plan's text with some of its entries changed. */
public final class PlanWith {

    private PlanWith() {}

    /**
     * The plan with each entry set; what stood there before is gone, and {@code null} takes an entry away.
     *
     * @param plan a plan as JSON
     * @param entries one JSON object: JSON pointer to value
     * @throws IllegalArgumentException if either is not JSON, or an entry has no place in the plan
     */
    public static String entries(String plan, String entries) {
        try {
            JsonNode changed = PlanReader.tree(plan);
            PlanReader.tree(entries)
                    .properties()
                    .forEach(e -> set(changed, JsonPointer.compile(e.getKey()), e.getValue()));
            return changed.toPrettyString();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("this is not JSON: " + e.getOriginalMessage(), e);
        }
    }

    private static void set(JsonNode plan, JsonPointer at, JsonNode value) {
        JsonNode holder = plan.at(at.head());
        if (holder instanceof ObjectNode object) {
            String name = at.last().getMatchingProperty();
            if (value.isNull()) {
                object.remove(name);
            } else {
                object.set(name, value);
            }
        } else if (holder instanceof ArrayNode array && array.has(at.last().getMatchingIndex()) && !value.isNull()) {
            array.set(at.last().getMatchingIndex(), value);
        } else {
            throw new IllegalArgumentException("the plan has no place for " + at);
        }
    }
}
