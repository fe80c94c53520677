package longrun.draft;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The demo house, an invented one with some facts unknown. */
public final class DemoHouse {

    private static final String FILE = "/longrun/data/demo/orchard-house.json";

    private DemoHouse() {}

    /** Its plan file. */
    public static String json() {
        try (InputStream in = DemoHouse.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the demo house is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
