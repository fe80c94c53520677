package longrun.http;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Decodes the body of a request as UTF-8, the encoding of JSON between programs (RFC 8259 section 8.1). */
final class JsonText {

    private JsonText() {}

    static String decode(byte @Nullable [] body) {
        if (body == null) {
            return "";
        }
        String text = new String(body, StandardCharsets.UTF_8);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
