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
 * @param capacityAtDesignBtuh the most vapour for a short time, by the rule, at the refill gauge and the design
 *     temperature; the supplier's own figure where he gave one
 * @param plannedBtuh the figure to plan with: the same while the tank keeps {@code keptPsig}
 * @param ownRuleBtuh the rule, also where the supplier's figure overrules it
 * @param leastPsig the least pressure the tank may be drawn down to
 * @param keptPsig the pressure to plan with: 20 psig, or what the first regulator or the tank asks for where that is more
 * @param boilingF temperature at and below which gas stops altogether, where the house stands
 * @param derived whether the vapour figure is derived and not a rule of the trade
 * @param supplier whether the supplier's figure alone decides
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
        Figure plannedBtuh,
        Figure ownRuleBtuh,
        Figure leastPsig,
        Figure keptPsig,
        Figure boilingF,
        boolean derived,
        boolean supplier,
        List<Demand> demands,
        List<CurvePoint> curve,
        List<SizeChoice> smallest) {

    /** Vapour at the refill gauge and one air temperature; empty where unknown. */
    public record CurvePoint(double airF, OptionalDouble capacityBtuh, OptionalDouble plannedBtuh) {}

    /**
     * The smallest standard tank that gives everything firing its vapour while it keeps the pressure to plan with, also
     * where its refill gauge stands 5 % of capacity too high.
     *
     * @param underground where it would lie
     * @param size empty where none does, or where it cannot be told
     * @param capacityBtuh what it gives then at the refill gauge
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
                plannedBtuh,
                ownRuleBtuh,
                leastPsig,
                keptPsig,
                boilingF));
        demands.forEach(d -> {
            out.add(d.btuh());
            if (d.holdMinutes().isKnown()) {
                out.add(d.holdMinutes());
            }
        });
        return out;
    }
}
