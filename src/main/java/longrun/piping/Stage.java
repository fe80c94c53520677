package longrun.piping;

import java.util.List;
import longrun.plan.Regulator;

/**
 * The pipe between one regulator and the next regulators or appliances.
 *
 * @param regulator the regulator it starts at
 * @param regulatorIndex its index in the plan
 * @param houseSide whether it lies behind the point of delivery (the outlet of the last regulator that is not a line
 *     regulator)
 * @param sections indices of its sections, each after the one it leaves
 * @param outlets where its runs end
 */
public record Stage(
        Regulator regulator, int regulatorIndex, boolean houseSide, List<Integer> sections, List<Outlet> outlets) {

    public String id() {
        return regulator.id();
    }

    /** "house-side" or "tank-side". */
    public String side() {
        return houseSide ? "house-side" : "tank-side";
    }
}
