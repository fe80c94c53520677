package longrun.plan;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import longrun.plan.choice.ColdWaterSource;
import longrun.quantity.Elevation;
import longrun.quantity.Length;
import longrun.quantity.Temperature;

/**
 * Where the house stands.
 *
 * @param monthlyMeanTemp twelve, January first
 * @param leadDays days between calling the supplier and the truck
 */
public record Site(
        Fact<Elevation> elevation,
        Fact<Temperature> winterDesignTemp,
        Fact<Length> snowDepth,
        Fact<Double> people,
        Fact<List<Temperature>> monthlyMeanTemp,
        Optional<ColdWater> coldWater,
        Fact<Temperature> groundTemp,
        Fact<Double> leadDays,
        List<Unreachable> unreachable,
        Optional<MainShutoff> mainShutoff) {

    /** Cold water's source and temperature: one value or twelve. */
    public record ColdWater(Fact<ColdWaterSource> source, Fact<List<Temperature>> temp) {}

    /** Days of the year on which the truck cannot come. */
    public record Unreachable(Fact<MonthDay> from, Fact<MonthDay> to) {}

    /** The building's main shutoff. */
    public record MainShutoff(Fact<Boolean> outdoors, Fact<Boolean> reachable) {}
}
