package longrun.fuel.fill;

import java.util.Optional;
import longrun.origin.Figure;
import longrun.tank.Demand;
import longrun.tank.StandardTanks;

/**
 * A standard tank in place of the one that stands there.
 *
 * @param waterGal its water capacity
 * @param coldestDays days a fill would last in the coldest month
 * @param everything what it gives with everything firing on the coldest morning
 * @param distances it must keep
 * @param standsThere whether it is the one entered
 */
public record Rung(
        double waterGal,
        Figure coldestDays,
        Demand everything,
        Optional<StandardTanks.Distances> distances,
        boolean standsThere) {}
