package longrun.rules.hotwater;

import java.util.List;
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
        return List.of(WaterSide.of(house.plan())
                .map(water -> judge(own, water))
                .orElseGet(() -> Judge.notFor(own, WaterSide.PLACE)));
    }

    abstract Verdict judge(Threshold own, WaterSide water);
}
