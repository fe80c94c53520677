package longrun.review.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.origin.Origin;

/** Writes where a number comes from. */
final class OriginJson {

    private OriginJson() {}

    static ObjectNode write(Origin origin) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("figure", origin.figure());
        out.put("value", origin.value());
        out.put("how", origin.how());
        origin.confidence().ifPresent(c -> out.put("confidence", c.written()));
        if (!origin.inputs().isEmpty()) {
            ArrayNode inputs = out.putArray("inputs");
            origin.inputs().forEach(i -> inputs.add(write(i)));
        }
        return out;
    }
}
