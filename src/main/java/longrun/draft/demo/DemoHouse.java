package longrun.draft.demo;

import java.nio.charset.StandardCharsets;
import longrun.origin.DataFile;

/** The demo house, an invented one with some facts unknown. */
public final class DemoHouse {

    /** Its name; a person who gives it another has made it a house of their own. */
    public static final String NAME = "Orchard house";

    private DemoHouse() {}

    /** Its plan file. */
    public static String json() {
        return new String(DataFile.bytes("demo/orchard-house.json"), StandardCharsets.UTF_8);
    }
}
