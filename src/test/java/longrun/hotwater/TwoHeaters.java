package longrun.hotwater;

import longrun.plan.Plan;
import longrun.plan.PlannedHouse;
import longrun.plan.Use;

/** A house of two water heaters and a furnace, with a use of hot water. */
final class TwoHeaters {

    static final String TANK = "'volume':'80 gal','setTemp':'140 degF','standbyLoss':'4 Btu/(h.degF)'";
    static final String PUMP = ",'heatPumpOutput':'5000 Btu/h','cop':2.5";

    private TwoHeaters() {}

    /** The plan, with further entries of its use of hot water. */
    static Plan plan(String... hotWater) {
        return house(hotWater).plan();
    }

    static PlannedHouse house(String... hotWater) {
        return PlannedHouse.behind("11 in w.c.", "0.5 in w.c.")
                .with("'site':{'elevation':'0 ft','coldWater':{'temp':'51 degF'}}")
                .add("appliances", "'id':'furnace','input':'60000 Btu/h','kind':'furnace'")
                .add("appliances", "'id':'heater','input':'180000 Btu/h','kind':'on-demand-water-heater'")
                .set(
                        "/use",
                        "{'hotWater':{'useTemp':'105 degF','dailyVolume':'55 gal'"
                                + (hotWater.length == 0 ? "" : "," + String.join(",", hotWater)) + "}}");
    }

    static Use.HotWater entry(Plan plan) {
        return plan.use().flatMap(Use::hotWater).orElseThrow();
    }
}
