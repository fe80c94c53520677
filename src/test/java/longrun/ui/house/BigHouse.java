package longrun.ui.house;

import longrun.plan.PlannedHouse;

/** An invented house of any size: a trunk of short sections, with a drop to a range at every other of them. */
public final class BigHouse {

    private BigHouse() {}

    /** Its plan with so many appliances, and at least one section more than these. */
    public static String json(int appliances, int sections) {
        PlannedHouse house = PlannedHouse.empty()
                .with("'name':'Big house'")
                .regulator("R1", "integral-two-stage", "tank", "11 in w.c.", "0.5 in w.c.");
        int trunk = sections - appliances;
        String before = "R1";
        for (int t = 0, drop = 0; t < trunk; t++) {
            String here = "T" + t;
            house.section(here, before, "steel", "north 2 ft", "'setting':'indoors'");
            before = here;
            for (; drop < (t + 1) * appliances / trunk; drop++) {
                house.section("D" + drop, here, "steel", "up 3 ft;east 2 ft", "'setting':'indoors'")
                        .appliance(
                                "range-" + drop,
                                "D" + drop,
                                "65,000 Btu/h",
                                "'kind':'range','name':'Range " + drop + "'",
                                "'connection':[{'part':'shutoff','distance':'3 ft','sameRoom':true},"
                                        + "{'part':'flexible-connector','length':'4 ft'}]");
            }
        }
        return house.text();
    }
}
