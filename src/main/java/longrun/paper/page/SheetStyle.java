package longrun.paper.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style of the sheets, one hand for all of them. */
public final class SheetStyle {

    private SheetStyle() {}

    static String read() {
        return read("sheet.css") + read("lists.css");
    }

    /** A style as it is packed, by its name below the sheets' own. */
    public static String read(String file) {
        try (InputStream in = SheetStyle.class.getResourceAsStream("/longrun/paper/" + file)) {
            if (in == null) {
                throw new IllegalStateException("longrun/paper/" + file + " is not there");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
