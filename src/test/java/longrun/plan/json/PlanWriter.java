package longrun.plan.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Fact;
import longrun.plan.Leg;
import longrun.plan.Plan;
import longrun.plan.choice.Named;
import org.jspecify.annotations.Nullable;

/** Writes a plan as JSON, every entry as it was typed; what is unknown is left out. */
public final class PlanWriter {

    private static final JsonNodeFactory JSON = JsonNodeFactory.withExactBigDecimals(true);

    private PlanWriter() {}

    /** The plan as a document; reading it again gives the same plan. */
    public static ObjectNode write(Plan plan) {
        return record(plan);
    }

    private static Object of(RecordShape.Field field, Object record) {
        try {
            return field.component().getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + field.name(), e);
        }
    }

    private static ObjectNode record(Object record) {
        RecordShape shape = RecordShape.of(record.getClass());
        ObjectNode out = JSON.objectNode();
        for (RecordShape.Field field : shape.fields()) {
            JsonNode node = field(of(field, record));
            if (node != null) {
                out.set(field.name(), node);
            }
        }
        return out;
    }

    private static @Nullable JsonNode field(Object value) {
        if (value instanceof Fact<?> fact) {
            return fact(fact);
        }
        if (value instanceof Optional<?> o) {
            return o.isPresent() ? record(o.get()) : null;
        }
        if (value instanceof List<?> list) {
            return list.isEmpty() ? null : list(list);
        }
        if (value instanceof Map<?, ?> map) {
            return map.isEmpty() ? null : map(map);
        }
        return JSON.textNode(value.toString());
    }

    private static @Nullable JsonNode fact(Fact<?> fact) {
        if (fact instanceof Fact.Known<?> known) {
            return typed(known);
        }
        return fact.isNone() ? JSON.textNode("none") : null;
    }

    private static JsonNode typed(Fact.Known<?> known) {
        Object value = known.value();
        if (value instanceof List<?> || value instanceof Map<?, ?>) {
            try {
                return PlanReader.tree(known.text());
            } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
                return value instanceof List<?> list ? list(list) : map((Map<?, ?>) value);
            }
        }
        if (value instanceof Boolean b) {
            return JSON.booleanNode(b);
        }
        if (value instanceof Double || value instanceof Integer) {
            return number(known.text());
        }
        return JSON.textNode(known.text());
    }

    private static JsonNode number(String text) {
        BigDecimal exact = new BigDecimal(text);
        boolean whole = exact.scale() == 0 && exact.precision() < 10;
        return whole ? JSON.numberNode(exact.intValueExact()) : JSON.numberNode(exact);
    }

    private static ArrayNode list(List<?> list) {
        ArrayNode out = JSON.arrayNode();
        list.forEach(item -> out.add(item(item)));
        return out;
    }

    private static ObjectNode map(Map<?, ?> map) {
        ObjectNode out = JSON.objectNode();
        map.forEach((k, v) -> out.set(k instanceof Named n ? n.written() : k.toString(), item(v)));
        return out;
    }

    private static JsonNode item(Object item) {
        if (item instanceof List<?> list) {
            return list(list);
        }
        if (item instanceof Number n) {
            return number(n.toString());
        }
        if (item instanceof Leg leg) {
            return JSON.textNode(leg.text());
        }
        if (item instanceof Named named) {
            return JSON.textNode(named.written());
        }
        return item.getClass().isRecord() ? record(item) : JSON.textNode(item.toString());
    }
}
