package longrun.plan.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks an entry's address up in the plan's schema. */
public final class SchemaPath {

    private static final JsonNode SCHEMA = PlanSchema.write();

    private SchemaPath() {}

    /** Whether a plan can hold an entry at a JSON pointer; a step of digits is an item of a list. */
    public static boolean holds(String pointer) {
        List<String> steps = Arrays.asList(pointer.split("/", -1));
        return find(SCHEMA, steps.subList(1, steps.size())).isPresent();
    }

    private static Optional<JsonNode> find(JsonNode at, List<String> steps) {
        if (at.has("$ref")) {
            return find(SCHEMA.at(at.path("$ref").asText().substring(1)), steps);
        }
        if (at.has("anyOf")) {
            for (JsonNode each : at.path("anyOf")) {
                Optional<JsonNode> found = find(each, steps);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }
        if (steps.isEmpty()) {
            return Optional.of(at);
        }
        String step = steps.get(0);
        return Stream.of(
                        at.path("properties").path(step),
                        step.matches("[0-9]+") ? at.path("items") : at.path("none"),
                        at.path("additionalProperties"))
                .filter(JsonNode::isObject)
                .findFirst()
                .flatMap(n -> find(n, steps.subList(1, steps.size())));
    }
}
