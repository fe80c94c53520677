package longrun.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** What a text must be to be kept as typed. */
final class DraftText {

    private static final JsonFactory JSON = new JsonFactory();

    private DraftText() {}

    /** Refuses what is not one JSON value: such a text is no draft, and could not be opened again. */
    static void requireJson(String text) {
        requireWhole(text);
        try (JsonParser parser = JSON.createParser(text)) {
            if (parser.nextToken() == null) {
                throw new IllegalArgumentException("a draft is JSON, this text is empty");
            }
            parser.skipChildren();
            JsonToken more = parser.nextToken();
            if (more != null) {
                throw new IllegalArgumentException("a draft is one JSON value, this text goes on after it");
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("a draft is JSON, this text is not", e);
        }
    }

    static void requireName(String name) {
        requireWhole(name);
    }

    /** Half a surrogate pair has no bytes in UTF-8: the database would put a question mark in its place. */
    private static void requireWhole(String text) {
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException("the text holds half a character");
        }
    }
}
