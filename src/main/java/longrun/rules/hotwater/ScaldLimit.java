package longrun.rules.hotwater;

import longrun.quantity.Same;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** Water goes to fixtures at 120 degF at most; that is no scald protection at a shower or tub. */
final class ScaldLimit extends HotWaterRule {

    private static final double MOST_F = 120;

    @Override
    public String name() {
        return "scald-limit";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        var valve = water.entry().mixingValve();
        String field = WaterSide.field("mixingValve");
        if (valve.isKnown()) {
            return valve.is(t -> Same.atMost(t.degF(), MOST_F))
                    ? Judge.holds(own, WaterSide.PLACE)
                    : Judge.broken(
                            own,
                            WaterSide.PLACE,
                            "the mixing valve lets water of " + valve.findText().orElse("") + " into the house",
                            "Set the mixing valve to 120 degF or less.",
                            field);
        }
        boolean hot = water.stores() || water.onDemandSet().is(t -> !Same.atMost(t.degF(), MOST_F));
        if (valve.isNone() && hot && water.valves("mixing").isEmpty()) {
            return Judge.brokenElsewhere(own, WaterSide.PLACE);
        }
        return Judge.asks(
                own,
                WaterSide.PLACE,
                "what a mixing valve lets into the house is not entered; 120 degF at the heater is no scald protection at"
                        + " the fixture",
                Question.fitter(
                        "What is the mixing valve set to, and do shower and tub have anti-scald valves of their own"
                                + " (ASSE 1016, ASSE 1070)?"),
                field);
    }
}
