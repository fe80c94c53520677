package longrun.rules.hotwater;

import longrun.plan.Use;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** Each heater keeps its own relief valve, with nothing between that could shut it off in any position. */
final class ReliefValveCutOff extends HotWaterRule {

    @Override
    public String name() {
        return "relief-valve-cut-off";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        for (Use.Valve v : water.valves()) {
            if (WaterSide.stops(v) && (v.around().is("relief") || v.after().is("relief"))
                    || v.what().is("relief") && v.after().is(a -> !isHeater(a))) {
                return Judge.broken(
                        own,
                        WaterSide.PLACE,
                        "a valve stands between a heater and its relief valve, or behind the relief valve: in one of its"
                                + " positions the heater has none",
                        "Set the relief valve straight into the heater, with no valve before or behind it.",
                        WaterSide.field("valves"));
            }
        }
        boolean hasStorage = water.entry().storage().isPresent();
        boolean hasOnDemand = water.entry().onDemand().isPresent();
        boolean storage = !hasStorage || keeps(water, WaterSide.STORAGE);
        boolean onDemand = !hasOnDemand || keeps(water, WaterSide.ON_DEMAND);
        boolean shut = water.valves().stream().anyMatch(WaterSide::stops);
        if (!hasStorage && (!hasOnDemand || !onDemand && !shut)) {
            return Judge.notFor(own, WaterSide.PLACE);
        }
        if (storage && onDemand) {
            return Judge.holds(own, WaterSide.PLACE);
        }
        String which = storage ? "on-demand" : "storage";
        return Judge.asks(
                own,
                WaterSide.PLACE,
                "whether the " + which + " heater keeps its own relief valve in every position of the valves is not"
                        + " entered",
                Question.fitter(
                        "Does each heater have a relief valve of its own, with no valve between it and the heater?"),
                WaterSide.field("valves"));
    }

    private static boolean keeps(WaterSide water, String heater) {
        return water.valves("relief").stream()
                .anyMatch(v -> v.after().is(heater) || v.around().is(heater));
    }

    private static boolean isHeater(String after) {
        return after.equals(WaterSide.STORAGE) || after.equals(WaterSide.ON_DEMAND);
    }
}
