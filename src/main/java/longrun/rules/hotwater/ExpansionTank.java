package longrun.rules.hotwater;

import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** Where a check valve closes the cold side, an expansion tank takes the water that heating makes more. */
final class ExpansionTank extends HotWaterRule {

    @Override
    public String name() {
        return "expansion-tank";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        if (!water.valves("expansion-tank").isEmpty()) {
            return Judge.holds(own, WaterSide.PLACE);
        }
        if (water.allNamed() && !water.valves("check").isEmpty()) {
            return Judge.broken(
                    own,
                    WaterSide.PLACE,
                    "a check valve closes the cold side, and there is no expansion tank",
                    "Add an expansion tank on the cold side, between the check valve and the heater.",
                    WaterSide.field("valves"));
        }
        if (water.allNamed() || !water.stores()) {
            return Judge.notFor(own, WaterSide.PLACE);
        }
        return Judge.asks(
                own,
                WaterSide.PLACE,
                "whether a check valve closes the cold side is not entered",
                Question.fitter("Does a check valve close the cold side, and is there an expansion tank?"),
                WaterSide.field("valves"));
    }
}
