package longrun.draft.demo;

import java.nio.charset.StandardCharsets;
import longrun.origin.DataFile;

/** The demo house: invented, with some facts left out. */
public final class DemoHouse {

    /** Its name; with another name it is a house of the person's own. */
    public static final String NAME = "Orchard house";

    private DemoHouse() {}

    /** Its plan file. */
    public static String json() {
        return new String(DataFile.bytes("demo/orchard-house.json"), StandardCharsets.UTF_8);
    }
}
