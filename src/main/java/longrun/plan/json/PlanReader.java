package longrun.plan.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import java.util.Optional;
import longrun.plan.Plan;

/** Reads a plan, or says everything that keeps it from being read. */
public final class PlanReader {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .nodeFactory(JsonNodeFactory.withExactBigDecimals(true))
            .build();

    private PlanReader() {}

    /** Reads a plan from its JSON text. */
    public static Reading read(String json) {
        try {
            return read(tree(json));
        } catch (JsonProcessingException e) {
            return failed("", notJson(e));
        }
    }

    /**
     * The document a text holds, numbers kept as typed.
     *
     * @throws JsonProcessingException where the text is not JSON
     */
    public static JsonNode tree(String json) throws JsonProcessingException {
        return MAPPER.readTree(json);
    }

    /** Reads a plan, however long, from a document that is already parsed. */
    public static Reading read(JsonNode document) {
        return read(document, PlanLimits.NONE);
    }

    /** Reads a plan from a document that is already parsed; a list longer than a house has is an error. */
    public static Reading read(JsonNode document, PlanLimits limits) {
        if (!document.isObject()) {
            return failed("", "a plan is one JSON object: write { \"format\": \"" + Plan.FORMAT + "\", ... }");
        }
        RecordReader reader = new RecordReader(limits);
        Plan plan = (Plan) reader.record(Plan.class, document, JsonPointer.empty());
        if (!document.path("format").isTextual()
                || !document.path("format").textValue().equals(Plan.FORMAT)) {
            reader.error("/format", "the format is missing or not one this reads: write \"" + Plan.FORMAT + "\"");
        }
        AsWritten written = AsWritten.of(plan, reader.places());
        PlanCheck.check(plan, document, written, reader::error);
        List<PlanError> errors = reader.errors();
        return new Reading(errors.isEmpty() ? Optional.of(plan) : Optional.empty(), errors, reader.unread(), written);
    }

    private static Reading failed(String pointer, String message) {
        return new Reading(Optional.empty(), List.of(new PlanError(pointer, message)), List.of(), AsWritten.IN_FULL);
    }

    private static String notJson(JsonProcessingException e) {
        String where = e.getLocation() == null
                ? ""
                : " at line " + e.getLocation().getLineNr() + ", column "
                        + e.getLocation().getColumnNr();
        String what = e.getOriginalMessage().split("\\R", 2)[0];
        return "this is not JSON" + where + " (" + what + "): send a plan as one JSON object";
    }
}
