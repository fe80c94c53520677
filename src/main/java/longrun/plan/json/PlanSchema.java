package longrun.plan.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.choice.Named;

/** The JSON Schema (2020-12) of a plan, made from the same records the reader follows. */
public final class PlanSchema {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final ObjectNode definitions = JSON.objectNode();
    private final Set<String> begun = new TreeSet<>();

    private PlanSchema() {}

    /** The schema as a document. */
    public static ObjectNode write() {
        PlanSchema schema = new PlanSchema();
        ObjectNode root = JSON.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Plan of a house's propane piping, " + Plan.FORMAT);
        root.put(
                "description",
                "Quantities are texts of a number and a unit. \"none\" means that somebody looked and there is none; a missing or null"
                        + " entry is not known.");
        ObjectNode plan = schema.object(Plan.class);
        plan.fields().forEachRemaining(e -> root.set(e.getKey(), e.getValue()));
        ((ObjectNode) root.get("properties")).set("format", JSON.objectNode().put("const", Plan.FORMAT));
        root.putArray("required").add("format");
        root.set("$defs", schema.definitions);
        return root;
    }

    private ObjectNode object(Class<?> record) {
        ObjectNode out = JSON.objectNode();
        out.put("type", "object");
        ObjectNode properties = out.putObject("properties");
        RecordShape.of(record).fields().forEach(f -> properties.set(f.name(), field(f.type())));
        return out;
    }

    private ObjectNode reference(Class<?> record) {
        String name = RecordShape.of(record).name();
        if (begun.add(name)) {
            definitions.set(name, object(record));
        }
        return JSON.objectNode().put("$ref", "#/$defs/" + name);
    }

    private ObjectNode field(Type type) {
        Class<?> raw = RecordShape.raw(type);
        if (raw == Fact.class) {
            return any(value(RecordShape.argument(type, 0)), JSON.objectNode().put("const", "none"), nothing());
        }
        if (raw == Optional.class) {
            return any(reference(RecordShape.raw(RecordShape.argument(type, 0))), nothing());
        }
        if (raw == List.class) {
            ObjectNode item = reference(RecordShape.raw(RecordShape.argument(type, 0)));
            return any(list(item), item.deepCopy(), nothing());
        }
        if (raw == Map.class) {
            return any(map(type), nothing());
        }
        return JSON.objectNode().put("type", "string");
    }

    private ObjectNode value(Type type) {
        Class<?> raw = RecordShape.raw(type);
        if (raw == List.class) {
            Class<?> item = RecordShape.raw(RecordShape.argument(type, 0));
            ObjectNode one = item.isRecord() && !Values.isText(item) ? reference(item) : single(item);
            return any(list(one), one.deepCopy());
        }
        return raw == Map.class ? map(type) : single(raw);
    }

    private ObjectNode map(Type type) {
        Class<?> keys = RecordShape.raw(RecordShape.argument(type, 0));
        Type values = RecordShape.argument(type, 1);
        ObjectNode out = JSON.objectNode().put("type", "object");
        ObjectNode value = RecordShape.raw(values) == List.class ? value(values) : single(RecordShape.raw(values));
        if (keys.isEnum()) {
            ObjectNode properties = out.putObject("properties");
            for (Object key : keys.getEnumConstants()) {
                properties.set(((Named) key).written(), value.deepCopy());
            }
            return out.put("additionalProperties", false);
        }
        out.set("additionalProperties", value);
        return out;
    }

    private static ObjectNode single(Class<?> type) {
        ObjectNode out = JSON.objectNode();
        if (type.isEnum()) {
            ArrayNode names = out.putArray("enum");
            for (Object constant : type.getEnumConstants()) {
                names.add(((Named) constant).written());
            }
            return out;
        }
        if (type == Boolean.class) {
            return out.put("type", "boolean");
        }
        if (type == Double.class || type == Integer.class) {
            return out.put("type", type == Integer.class ? "integer" : "number").put("minimum", 0);
        }
        return out.put("type", "string").put("description", Values.example(type));
    }

    private static ObjectNode list(ObjectNode item) {
        ObjectNode out = JSON.objectNode().put("type", "array");
        out.set("items", item);
        return out;
    }

    private static ObjectNode nothing() {
        return JSON.objectNode().put("type", "null");
    }

    private static ObjectNode any(ObjectNode... choices) {
        ObjectNode out = JSON.objectNode();
        ArrayNode list = out.putArray("anyOf");
        for (ObjectNode choice : choices) {
            list.add(choice);
        }
        return out;
    }
}
