package longrun.ui.house;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** An invented house of any size: a trunk of short sections, with a drop to a range at every other of them. */
public final class BigHouse {

    private BigHouse() {}

    /** Its plan with so many appliances, and at least one section more than these. */
    public static String json(int appliances, int sections) {
        ObjectNode plan = JsonNodeFactory.instance.objectNode();
        plan.put("format", "longrun-plan/1").put("name", "Big house");
        plan.putArray("regulators")
                .addObject()
                .put("id", "R1")
                .put("kind", "integral-two-stage")
                .put("fedBy", "tank")
                .put("outlet", "11 in w.c.")
                .put("allowedDrop", "0.5 in w.c.");
        var all = plan.putArray("sections");
        var burning = plan.putArray("appliances");
        int trunk = sections - appliances;
        String before = "R1";
        for (int t = 0, drop = 0; t < trunk; t++) {
            String here = "T" + t;
            section(all.addObject(), here, before).putArray("legs").add("north 2 ft");
            before = here;
            for (; drop < (t + 1) * appliances / trunk; drop++) {
                section(all.addObject(), "D" + drop, here)
                        .putArray("legs")
                        .add("up 3 ft")
                        .add("east 2 ft");
                appliance(burning.addObject(), drop);
            }
        }
        return plan.toString();
    }

    private static ObjectNode section(ObjectNode s, String id, String from) {
        return s.put("id", id).put("from", from).put("material", "steel").put("setting", "indoors");
    }

    private static void appliance(ObjectNode a, int number) {
        a.put("id", "range-" + number)
                .put("kind", "range")
                .put("name", "Range " + number)
                .put("input", "65,000 Btu/h")
                .put("fedBy", "D" + number);
        var parts = a.putArray("connection");
        parts.addObject().put("part", "shutoff").put("distance", "3 ft").put("sameRoom", true);
        parts.addObject().put("part", "flexible-connector").put("length", "4 ft");
    }
}
