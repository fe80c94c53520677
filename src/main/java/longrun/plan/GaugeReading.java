package longrun.plan;

import longrun.quantity.Mass;
import longrun.quantity.Ratio;

/** What a tank's gauge shows: a share of its water capacity, or for a cylinder the weight of propane left. */
public sealed interface GaugeReading {

    record Share(Ratio share) implements GaugeReading {}

    record Weight(Mass weight) implements GaugeReading {}
}
