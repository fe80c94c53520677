package longrun.tank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Origin;

/**
 * What is known of the tank.
 *
 * @param waterGal water capacity of all tanks together
 * @param fullGal gallons when filled to 80 %
 * @param fullGaugeLowGal the same with the gauge 5 % of capacity off
 * @param usableGal from a fill down to the refill gauge
 * @param usableGaugeLowGal the same with the gauge 5 % of capacity off
 * @param nowGal at the gauge's reading
 * @param refillGal left at the refill gauge
 * @param capacityAtDesignBtuh vapour by the rule, at the refill gauge and the design temperature; the supplier's own figure
 *     where he gave one
 * @param capacityAt20PsigBtuh the same kept at 20 psig in the tank
 * @param ownRuleBtuh the rule, also where the supplier's figure overrules it
 * @param leastPsig the least pressure the tank must keep
 * @param derived whether the vapour figure is derived and not a rule of the trade
 * @param supplier whether the supplier's figure decides
 */
public record TankReport(
        Figure waterGal,
        Figure fullGal,
        Figure fullGaugeLowGal,
        Figure usableGal,
        Figure usableGaugeLowGal,
        Figure nowGal,
        Figure refillGal,
        Figure capacityAtDesignBtuh,
        Figure capacityAt20PsigBtuh,
        Figure ownRuleBtuh,
        Figure leastPsig,
        boolean derived,
        boolean supplier,
        List<Demand> demands,
        List<CurvePoint> curve,
        List<SizeChoice> smallest) {

    /** Vapour at the refill gauge and one air temperature; empty where unknown. */
    public record CurvePoint(double airF, OptionalDouble capacityBtuh, OptionalDouble at20PsigBtuh) {}

    /**
     * The smallest standard tank that gives everything firing its vapour.
     *
     * @param underground where it would lie
     * @param size empty where none does, or where it cannot be told
     * @param missing what is lacking to tell
     */
    public record SizeChoice(
            boolean underground,
            Optional<StandardTanks.Size> size,
            Optional<StandardTanks.Distances> distances,
            Figure capacityBtuh,
            List<Missing> missing) {}

    public TankReport {
        demands = List.copyOf(demands);
        curve = List.copyOf(curve);
        smallest = List.copyOf(smallest);
    }

    /** Every entry that is lacking, once. */
    public List<Missing> missing() {
        Set<Missing> out = new LinkedHashSet<>();
        figures().forEach(f -> out.addAll(f.missing()));
        return List.copyOf(out);
    }

    /** The answer to "where from?" for every figure. */
    public List<Origin> origins() {
        return figures().stream().map(Figure::origin).toList();
    }

    private List<Figure> figures() {
        List<Figure> out = new ArrayList<>(List.of(
                waterGal,
                fullGal,
                fullGaugeLowGal,
                usableGal,
                usableGaugeLowGal,
                nowGal,
                refillGal,
                capacityAtDesignBtuh,
                capacityAt20PsigBtuh,
                ownRuleBtuh,
                leastPsig));
        demands.forEach(d -> {
            out.add(d.btuh());
            if (d.status() == Demand.Status.SHORT) {
                out.add(d.holdMinutes());
            }
        });
        return out;
    }
}
