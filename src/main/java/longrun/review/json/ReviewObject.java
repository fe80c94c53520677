package longrun.review.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import longrun.origin.Origin;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * A JSON object of a review while it is written. A number can only be written together with its origin, so that none is
 * without one; an unknown value is left out.
 */
final class ReviewObject {

    private static final int DECIMALS = 6;
    private static final JsonNodeFactory JSON = JsonNodeFactory.withExactBigDecimals(true);

    private final ObjectNode node;
    private final JsonPointer pointer;
    private final Map<String, Supplier<Origin>> origins;

    private ReviewObject(ObjectNode node, JsonPointer pointer, Map<String, Supplier<Origin>> origins) {
        this.node = node;
        this.pointer = pointer;
        this.origins = origins;
    }

    static ReviewObject root(Map<String, Supplier<Origin>> origins) {
        return new ReviewObject(JSON.objectNode(), JsonPointer.empty(), origins);
    }

    ObjectNode node() {
        return node;
    }

    void number(String field, double value, Supplier<Origin> origin) {
        node.set(field, decimal(value));
        origins.put(pointer.appendProperty(field).toString(), origin);
    }

    void number(String field, OptionalDouble value, Supplier<Origin> origin) {
        if (value.isPresent()) {
            number(field, value.getAsDouble(), origin);
        }
    }

    /** A length in feet. */
    void feet(String field, Optional<Length> value, Supplier<Origin> origin) {
        value.ifPresent(v -> number(field, v.feet(), origin));
    }

    /** A heat rate in Btu/h. */
    void btuh(String field, Optional<HeatRate> value, Supplier<Origin> origin) {
        value.ifPresent(v -> number(field, v.btuh(), origin));
    }

    /** A pressure in in. w.c. */
    void inWc(String field, Optional<Pressure> value, Supplier<Origin> origin) {
        value.ifPresent(v -> number(field, v.inWc(), origin));
    }

    /** A list of numbers that share one origin. */
    void numbers(String field, double[] values, Supplier<Origin> origin) {
        ArrayNode list = node.putArray(field);
        JsonPointer at = pointer.appendProperty(field);
        for (int i = 0; i < values.length; i++) {
            list.add(decimal(values[i]));
            origins.put(at.appendIndex(i).toString(), origin);
        }
    }

    void text(String field, String value) {
        node.put(field, value);
    }

    void text(String field, Optional<String> value) {
        value.ifPresent(v -> node.put(field, v));
    }

    void bool(String field, boolean value) {
        node.put(field, value);
    }

    ReviewObject child(String field) {
        return new ReviewObject(node.putObject(field), pointer.appendProperty(field), origins);
    }

    /** A list whose items are added one by one. */
    Items list(String field) {
        return new Items(node.putArray(field), pointer.appendProperty(field));
    }

    /** A list being written. */
    final class Items {
        private final ArrayNode list;
        private final JsonPointer at;

        private Items(ArrayNode list, JsonPointer at) {
            this.list = list;
            this.at = at;
        }

        ReviewObject add() {
            JsonPointer item = at.appendIndex(list.size());
            return new ReviewObject(list.addObject(), item, origins);
        }

        void add(String text) {
            list.add(text);
        }
    }

    private static com.fasterxml.jackson.databind.JsonNode decimal(double value) {
        BigDecimal exact = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        BigDecimal plain = exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
        if (plain.scale() <= 0) {
            return plain.precision() - plain.scale() < 10
                    ? IntNode.valueOf(plain.intValueExact())
                    : DecimalNode.valueOf(plain.setScale(0));
        }
        return DecimalNode.valueOf(plain);
    }
}
