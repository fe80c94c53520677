package longrun.rules.hotwater;

import longrun.plan.Fact;
import longrun.plan.Use;
import longrun.quantity.Same;
import longrun.quantity.Temperature;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** An on-demand heater behind storage is labelled for water as hot as storage sends it. */
final class PreheatedInlet extends HotWaterRule {

    @Override
    public String name() {
        return "preheated-inlet";
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        if (!water.inSeries()) {
            return Judge.notFor(own, WaterSide.PLACE);
        }
        String field = WaterSide.field(water.entry().onDemand().isPresent() ? "onDemand/maxInletTemp" : "onDemand");
        Fact<Temperature> label =
                water.entry().onDemand().map(Use.OnDemand::maxInletTemp).orElse(Fact.unknown());
        if (!label.isKnown() || !water.storageSet().isKnown()) {
            return Judge.asks(
                    own,
                    WaterSide.PLACE,
                    label.isKnown()
                            ? "what the storage heater is set to is not entered"
                            : "the hottest inlet water on the on-demand heater's label is not entered",
                    label.isKnown()
                            ? Question.owner("What is the storage heater set to, in degF?")
                            : Question.plate("Which is the hottest inlet water the on-demand heater is labelled for?"),
                    label.isKnown()
                            ? WaterSide.field(water.entry().storage().isPresent() ? "storage/setTemp" : "storage")
                            : field);
        }
        double most = label.findValue().orElseThrow().degF();
        return water.storageSet().is(t -> Same.atMost(t.degF(), most))
                ? Judge.holds(own, WaterSide.PLACE)
                : Judge.broken(
                        own,
                        WaterSide.PLACE,
                        "storage sends water of up to "
                                + water.storageSet().findText().orElse("")
                                + " to an on-demand heater labelled for "
                                + label.findText().orElse(""),
                        "Ask the maker for a heater or a kit for preheated water, or put a mixing valve between, beside the"
                                + " last one.",
                        field);
    }
}
