package longrun.plan.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.plan.Fact;
import longrun.plan.choice.Named;
import longrun.quantity.NotAQuantity;

/** Reads plan records from JSON by their components, collecting every error rather than stopping at the first. */
final class RecordReader {

    private final PlanLimits limits;
    private final List<PlanError> errors = new ArrayList<>();
    private int untold;
    private final List<String> unread = new ArrayList<>();
    private final Map<String, List<Integer>> places = new HashMap<>();

    RecordReader(PlanLimits limits) {
        this.limits = limits;
    }

    List<PlanError> errors() {
        if (untold == 0) {
            return errors;
        }
        List<PlanError> all = new ArrayList<>(errors);
        all.add(new PlanError(
                "",
                "there are " + untold
                        + " more errors, too many to list at once: correct these, and send the plan again"));
        return all;
    }

    List<String> unread() {
        return unread;
    }

    /** Where the items of a list stand, by its pointer, where that is not where they were read. */
    Map<String, List<Integer>> places() {
        return places;
    }

    private void error(JsonPointer pointer, String message) {
        error(pointer.toString(), message);
    }

    void error(String pointer, String message) {
        add(new PlanError(pointer, message));
    }

    private void add(PlanError error) {
        if (errors.size() < limits.errors()) {
            errors.add(error);
        } else {
            untold++;
        }
    }

    Object record(Class<?> type, JsonNode node, JsonPointer pointer) {
        RecordShape shape = RecordShape.of(type);
        Object[] values = new Object[shape.fields().size()];
        Set<String> known = new HashSet<>();
        for (int i = 0; i < values.length; i++) {
            RecordShape.Field field = shape.fields().get(i);
            known.add(field.name());
            JsonNode child = node.path(field.name());
            values[i] = absent(child)
                    ? missing(field.type(), pointer)
                    : field(field.type(), child, pointer.appendProperty(field.name()));
        }
        node.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                unread.add(pointer.appendProperty(name).toString());
            }
        });
        return shape.create(values);
    }

    private Object field(Type type, JsonNode node, JsonPointer pointer) {
        Class<?> raw = RecordShape.raw(type);
        if (raw == Fact.class) {
            return fact(RecordShape.argument(type, 0), node, pointer);
        }
        if (raw == Optional.class) {
            return optional(RecordShape.raw(RecordShape.argument(type, 0)), node, pointer);
        }
        if (raw == List.class) {
            return records(RecordShape.raw(RecordShape.argument(type, 0)), node, pointer);
        }
        if (raw == Map.class) {
            return map(RecordShape.raw(RecordShape.argument(type, 0)), RecordShape.argument(type, 1), node, pointer);
        }
        return id(node, pointer);
    }

    private static Object missing(Type type, JsonPointer holder) {
        Class<?> raw = RecordShape.raw(type);
        if (raw == Fact.class) {
            return Fact.unknown();
        }
        if (raw == Optional.class) {
            return Optional.empty();
        }
        if (raw == List.class) {
            return List.of();
        }
        if (raw == Map.class) {
            return Map.of();
        }
        // an entry without a name still has a place: its path names it, and a finding asks for the id
        return holder.toString().replaceFirst("^/", "").replace('/', '-');
    }

    private String id(JsonNode node, JsonPointer pointer) {
        if (!node.isTextual() || node.textValue().isBlank()) {
            error(pointer, Values.shown(node) + " is not a name: write a short text, such as \"A\"");
            return "";
        }
        if (node.textValue().length() > 200) {
            error(pointer, "a name of " + node.textValue().length() + " characters is too long: write up to 200");
        }
        return node.textValue();
    }

    private Optional<Object> optional(Class<?> type, JsonNode node, JsonPointer pointer) {
        if (isNone(node)) {
            return Optional.empty();
        }
        if (!node.isObject()) {
            error(pointer, Values.shown(node) + " stands where an object is needed: write { ... } with its entries");
            return Optional.empty();
        }
        return Optional.of(record(type, node, pointer));
    }

    private List<Object> records(Class<?> type, JsonNode node, JsonPointer pointer) {
        if (isNone(node)) {
            return List.of();
        }
        if (node.isObject()) {
            places.put(pointer.toString(), List.of(AsWritten.ALONE));
            return List.of(record(type, node, pointer));
        }
        if (!node.isArray()) {
            error(pointer, Values.shown(node) + " stands where a list is needed: write [ ... ]");
            return List.of();
        }
        if (isTooLong(node, pointer)) {
            return List.of();
        }
        List<Object> out = new ArrayList<>(node.size());
        List<Integer> read = new ArrayList<>(node.size());
        int i = 0;
        for (JsonNode item : node) {
            JsonPointer at = pointer.appendIndex(i);
            if (item.isObject()) {
                out.add(record(type, item, at));
                read.add(i);
            } else {
                error(at, Values.shown(item) + " stands where an object is needed: write { ... } with its entries");
            }
            i++;
        }
        keepPlaces(pointer, read, i);
        return Collections.unmodifiableList(out);
    }

    private Fact<Object> fact(Type type, JsonNode node, JsonPointer pointer) {
        Class<?> raw = RecordShape.raw(type);
        if (isNone(node) && !Values.hasOwnNone(raw)) {
            return Fact.none();
        }
        if (raw == List.class) {
            Class<?> item = RecordShape.raw(RecordShape.argument(type, 0));
            List<Object> list = item.isRecord() && !Values.isText(item)
                    ? records(item, node, pointer)
                    : values(item, node, pointer);
            return Fact.known(list, node.toString());
        }
        if (raw == Map.class) {
            return Fact.known(
                    map(RecordShape.raw(RecordShape.argument(type, 0)), RecordShape.argument(type, 1), node, pointer),
                    node.toString());
        }
        return single(raw, node, pointer).map(v -> Fact.known(v, node.asText())).orElseGet(Fact::unknown);
    }

    private List<Object> values(Class<?> type, JsonNode node, JsonPointer pointer) {
        List<Object> out = new ArrayList<>();
        if (!node.isArray()) {
            places.put(pointer.toString(), List.of(AsWritten.ALONE));
            single(type, node, pointer).ifPresent(out::add);
            return Collections.unmodifiableList(out);
        }
        if (isTooLong(node, pointer)) {
            return List.of();
        }
        List<Integer> read = new ArrayList<>(node.size());
        int i = 0;
        for (JsonNode item : node) {
            int at = i++;
            single(type, item, pointer.appendIndex(at)).ifPresent(value -> {
                out.add(value);
                read.add(at);
            });
        }
        keepPlaces(pointer, read, i);
        return Collections.unmodifiableList(out);
    }

    private boolean isTooLong(JsonNode node, JsonPointer pointer) {
        int most = limits.entries(pointer.toString());
        if (node.size() > most) {
            error(pointer, node.size() + " entries are more than a house has here: write up to " + most);
        }
        return node.size() > most;
    }

    private void keepPlaces(JsonPointer pointer, List<Integer> read, int written) {
        if (read.size() < written) {
            places.put(pointer.toString(), read);
        }
    }

    private Map<Object, Object> map(Class<?> keys, Type values, JsonNode node, JsonPointer pointer) {
        if (isNone(node)) {
            return Map.of();
        }
        if (!node.isObject()) {
            error(pointer, Values.shown(node) + " stands where an object is needed: write { \"name\": value }");
            return Map.of();
        }
        if (isTooLong(node, pointer)) {
            return Map.of();
        }
        Map<Object, Object> out = new LinkedHashMap<>();
        node.properties().forEach(e -> {
            JsonPointer at = pointer.appendProperty(e.getKey());
            Optional<Object> key = keys == String.class ? Optional.of(e.getKey()) : key(keys, e.getKey(), at);
            Object value = RecordShape.raw(values) == List.class
                    ? values(RecordShape.raw(RecordShape.argument(values, 0)), e.getValue(), at)
                    : single(RecordShape.raw(values), e.getValue(), at).orElse(null);
            if (key.isPresent() && value != null) {
                out.put(key.get(), value);
            }
        });
        return Collections.unmodifiableMap(out);
    }

    private Optional<Object> key(Class<?> type, String written, JsonPointer pointer) {
        for (Object constant : type.getEnumConstants()) {
            if (((Named) constant).written().equals(written)) {
                return Optional.of(constant);
            }
        }
        error(pointer, "\"" + written + "\" is not among the choices: write one of " + Values.names(type));
        return Optional.empty();
    }

    private Optional<Object> single(Class<?> type, JsonNode node, JsonPointer pointer) {
        try {
            return Optional.of(Values.read(type, node));
        } catch (NotAQuantity e) {
            PlanError.Kind kind = e instanceof Values.NotANumber ? PlanError.Kind.NOT_A_NUMBER : PlanError.Kind.OTHER;
            add(new PlanError(pointer.toString(), e.advice(), kind));
            return Optional.empty();
        }
    }

    private static boolean absent(JsonNode node) {
        return node.isMissingNode() || node.isNull();
    }

    private static boolean isNone(JsonNode node) {
        return node.isTextual() && node.textValue().strip().equalsIgnoreCase("none");
    }
}
