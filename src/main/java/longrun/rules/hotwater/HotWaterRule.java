package longrun.rules.hotwater;

import java.util.List;
import java.util.Optional;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** A rule judged once, at the hot water of a house; not for a plan that says nothing of it. */
abstract class HotWaterRule implements Rule {

    @Override
    public final List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        Optional<WaterSide> water = WaterSide.of(house.plan());
        return List.of(water.isPresent() ? judge(own, water.get()) : Judge.notFor(own, WaterSide.PLACE));
    }

    abstract Verdict judge(Threshold own, WaterSide water);
}
