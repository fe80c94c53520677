package longrun.rules.hotwater;

import java.util.List;
import longrun.rules.shape.Rule;

/** Topic hot water. */
public final class HotWater {

    private HotWater() {}

    public static List<Rule> rules() {
        return List.of(
                new MixingValveLast(),
                new ReliefValveCutOff(),
                new StorageLukewarm(),
                new PreheatedInlet(),
                new ScaldLimit(),
                new ExpansionTank());
    }
}
