package longrun.rules.hotwater;

import longrun.quantity.Same;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** Storage is held at 140 degF, or Legionella may grow in it. */
final class StorageLukewarm extends HotWaterRule {

    private static final double LEAST_F = 140;

    @Override
    public String name() {
        return "storage-lukewarm";
    }

    @Override
    Verdict judge(Threshold own, WaterSide water) {
        if (!water.stores()) {
            return Judge.notFor(own, WaterSide.PLACE);
        }
        String field = WaterSide.field("storage/setTemp");
        if (!water.storageSet().isKnown()) {
            return Judge.asks(
                    own,
                    WaterSide.PLACE,
                    "what the storage heater is set to is not entered",
                    Question.owner("What is the storage heater set to, in degF?"),
                    field);
        }
        return water.storageSet().is(t -> Same.atLeast(t.degF(), LEAST_F))
                ? Judge.holds(own, WaterSide.PLACE)
                : Judge.broken(
                        own,
                        WaterSide.PLACE,
                        "the storage heater is set to "
                                + water.storageSet().findText().orElse("") + ", under 140 degF",
                        "Set it to 140 degF with a mixing valve behind it, or ask the health authority for a written weekly"
                                + " heat-up.",
                        field);
    }
}
