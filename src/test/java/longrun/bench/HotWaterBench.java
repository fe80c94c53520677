package longrun.bench;

import java.util.concurrent.TimeUnit;
import longrun.Samples;
import longrun.hotwater.HotWaterStudy;
import longrun.plan.Plan;
import longrun.plan.Use;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of a year of hot water in three arrangements; the goal is under 50 ms on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class HotWaterBench {

    private final Plan showers = Samples.sample();
    private final Plan pattern = Samples.plan(Samples.text("data/demo/orchard-house.json"));
    private final Plan mains = Samples.plan(Samples.text("data/demo/orchard-house.json")
            .replace("\"coldWater\": { \"source\": \"well\", \"temp\": \"51 degF\" }, ", ""));

    @Benchmark
    public Object yearOfEveningShowers() {
        return anew(showers);
    }

    @Benchmark
    public Object yearOfATestPattern() {
        return anew(pattern);
    }

    @Benchmark
    public Object yearWithMainsThatTurnWithTheMonths() {
        return anew(mains);
    }

    private static HotWaterStudy anew(Plan plan) {
        return HotWaterStudy.of(plan, plan.use().flatMap(Use::hotWater).orElseThrow());
    }
}
