package longrun.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Checks that a text can be stored as typed. */
final class DraftText {

    private static final JsonFactory JSON = new JsonFactory();

    private DraftText() {}

    /**
     * Requires exactly one JSON value, since any other text could not be opened again.
     *
     * @throws IllegalArgumentException where it is not
     */
    static void requireJson(String text) {
        requireWhole(text);
        try (JsonParser parser = JSON.createParser(text)) {
            if (parser.nextToken() == null) {
                throw new IllegalArgumentException("a draft must be JSON, and this text is empty");
            }
            parser.skipChildren();
            JsonToken more = parser.nextToken();
            if (more != null) {
                throw new IllegalArgumentException("a draft must be one JSON value, and this text goes on after it");
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("a draft must be JSON, and this text is not", e);
        }
    }

    /**
     * Requires a name that can be stored without loss; a blank one is allowed.
     *
     * @throws IllegalArgumentException where it cannot
     */
    static void requireName(String name) {
        requireWhole(name);
    }

    /** Half of a surrogate pair cannot be written in UTF-8: the database would store a question mark instead. */
    private static void requireWhole(String text) {
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException("the text holds half a character");
        }
    }
}
