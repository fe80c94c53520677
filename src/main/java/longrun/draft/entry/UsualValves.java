package longrun.draft.entry;

import com.fasterxml.jackson.databind.node.ArrayNode;

/** The valves of the water side as they are usually drawn where a storage and an on-demand heater stand in series. */
public final class UsualValves {

    /** What each is, which way it stands to a heater, and to which. */
    private static final String[][] USUAL = {
        {"mixing", "after", "on-demand"},
        {"three-way", "around", "storage"},
        {"three-way", "around", "on-demand"},
        {"relief", "after", "storage"},
        {"relief", "after", "on-demand"}
    };

    private UsualValves() {}

    /** Writes them in place of what is entered. */
    public static void write(DraftEdit draft) {
        ArrayNode list = draft.root().withObject("/use/hotWater").putArray("valves");
        for (String[] v : USUAL) {
            list.addObject().put("what", v[0]).put(v[1], v[2]);
        }
    }
}
