package longrun.review;

import java.util.Locale;
import longrun.plan.Plan;
import longrun.plan.PlannedHouse;

/** Long houses for tests and benchmarks. */
public final class Chains {

    private Chains() {}

    /** One chain of sections, 1,000 ft in all, with an appliance of 9,000 Btu/h at its end. */
    public static Plan chain(int sections) {
        PlannedHouse house = head();
        String from = "R";
        for (int i = 0; i < sections; i++) {
            house.section("s" + i, from, "steel", String.format(Locale.ROOT, "%.3f mm", 304_800.0 / sections));
            from = "s" + i;
        }
        return house.appliance("a", from, "9 kBtu/h").plan();
    }

    /** A tree in which each section feeds two, with an appliance at each end. */
    public static Plan tree(int sections) {
        return treeHouse(sections).plan();
    }

    /** The same as its text. */
    public static String treeText(int sections) {
        return treeHouse(sections).text();
    }

    private static PlannedHouse treeHouse(int sections) {
        PlannedHouse house = head();
        for (int i = 0; i < sections; i++) {
            house.section("s" + i, i == 0 ? "R" : "s" + (i - 1) / 2, "steel", "2 ft");
        }
        for (int i = sections / 2; i < sections; i++) {
            house.appliance("a" + i, "s" + i, "300 Btu/h");
        }
        return house;
    }

    private static PlannedHouse head() {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.").with("'fittingAllowance':'none'");
    }
}
