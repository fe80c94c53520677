package longrun.draft.entry;

import com.fasterxml.jackson.databind.node.ArrayNode;

/** The usual valves of the water side with a storage heater and an on-demand heater in series (common practice). */
public final class UsualValves {

    /** The kind of each, its position relative to a heater, and the heater. */
    private static final String[][] USUAL = {
        {"mixing", "after", "on-demand"},
        {"three-way", "around", "storage"},
        {"three-way", "around", "on-demand"},
        {"relief", "after", "storage"},
        {"relief", "after", "on-demand"}
    };

    private UsualValves() {}

    /** Writes them in place of the valves entered. */
    public static void write(DraftEdit draft) {
        ArrayNode list = draft.root().withObject("/use/hotWater").putArray("valves");
        for (String[] v : USUAL) {
            list.addObject().put("what", v[0]).put(v[1], v[2]);
        }
    }
}
