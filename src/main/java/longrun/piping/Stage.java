package longrun.piping;

import java.util.List;
import longrun.plan.Regulator;

/**
 * The pipe between one regulator and the next regulators or appliances.
 *
 * @param regulator the regulator it starts at
 * @param regulatorIndex its index in the plan
 * @param side ahead of the point of delivery or behind it
 * @param sections indices of its sections, each after the one it leaves
 * @param outlets where its runs end
 */
public record Stage(Regulator regulator, int regulatorIndex, Side side, List<Integer> sections, List<Outlet> outlets) {

    public String id() {
        return regulator.id();
    }
}
