package longrun.bench;

import java.util.concurrent.TimeUnit;
import longrun.fuel.FuelReport;
import longrun.fuel.FuelYear;
import longrun.plan.Plan;
import longrun.tank.Houses;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to study the tank and the year of one house; the goal is under 5 ms on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 1)
@Fork(1)
public class TankYearBench {

    private final Plan plan = Houses.orchard();
    private final Plan shortPeak = Houses.orchard("199000", "599000");

    @Benchmark
    public FuelReport tankAndYear() {
        return FuelYear.of(plan);
    }

    @Benchmark
    public TankReport tankWithAPeakThatIsHeldForAWhile() {
        return TankStudy.of(shortPeak);
    }
}
