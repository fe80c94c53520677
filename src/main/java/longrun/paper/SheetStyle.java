package longrun.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style of the sheets, one hand for all of them. */
final class SheetStyle {

    private SheetStyle() {}

    static String read() {
        try (InputStream in = SheetStyle.class.getResourceAsStream("/longrun/paper/sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("longrun/paper/sheet.css is not there");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
