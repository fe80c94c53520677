package longrun.rules.hotwater;

import java.util.List;
import longrun.plan.Use;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** The mixing valve is the last device before the house, and nothing leads hot water round it. */
final class MixingValveLast extends HotWaterRule {

    private static final double SAFE_F = 120;

    @Override
    public String name() {
        return "mixing-valve-last";
    }

    @Override
    public Precedence precedence() {
        return Precedence.ORDER;
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        List<Use.Valve> mixing = water.valves("mixing");
        if (water.valves().stream().anyMatch(v -> v.around().is("mixing"))) {
            return broken(own, "a valve leads hot water round the mixing valve", "Take away what leads round it.");
        }
        if (!mixing.isEmpty()) {
            return order(own, water, mixing);
        }
        boolean none = water.entry().mixingValve().isNone()
                || water.allNamed() && !water.entry().mixingValve().isKnown();
        boolean hot = water.stores() || water.onDemandSet().is(t -> t.degF() > SAFE_F);
        if (none && hot) {
            return broken(
                    own,
                    "there is no mixing valve, and water hotter than 120 degF can reach the house",
                    "Add a thermostatic mixing valve as the last device before the house.");
        }
        if (!hot
                && (none || !water.entry().mixingValve().isKnown())
                && water.onDemandSet().isKnown()) {
            return Judge.notFor(own, WaterSide.PLACE);
        }
        return Judge.asks(
                own,
                WaterSide.PLACE,
                "where the mixing valve sits is not entered",
                Question.fitter("What does the mixing valve follow, and does any valve lead hot water round it?"),
                WaterSide.field("valves"));
    }

    private static Verdict order(Threshold own, WaterSide water, List<Use.Valve> mixing) {
        String other = water.last().equals(WaterSide.ON_DEMAND) ? WaterSide.STORAGE : WaterSide.ON_DEMAND;
        if (mixing.stream().anyMatch(v -> v.after().is(water.last()))) {
            return Judge.holds(own, WaterSide.PLACE);
        }
        if (mixing.stream().anyMatch(v -> v.after().is(other))) {
            return broken(
                    own,
                    "the mixing valve follows the " + other + " heater, and the " + water.last()
                            + " heater comes behind it",
                    "Move the mixing valve behind the " + water.last() + " heater, last before the house.");
        }
        return Judge.asks(
                own,
                WaterSide.PLACE,
                "what the mixing valve follows is not entered",
                Question.fitter("Which heater does the mixing valve follow: storage or on-demand?"),
                WaterSide.field("valves"));
    }

    private static Verdict broken(Threshold own, String found, String remedy) {
        return Judge.broken(own, WaterSide.PLACE, found, remedy, WaterSide.field("valves"));
    }
}
