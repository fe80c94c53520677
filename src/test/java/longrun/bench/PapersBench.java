package longrun.bench;

import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import longrun.Samples;
import longrun.paper.Papers;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All sheets of the demo house in one PDF, from its review. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class PapersBench {

    private Printing printing;

    @Setup
    public void prepare() {
        String plan = Samples.resource("/longrun/data/demo/orchard-house.json");
        printing = new Printing(
                Reviewer.standard().review(Samples.plan(plan), ReviewParts.ALL),
                plan,
                LocalDate.of(2026, 10, 1),
                PaperSize.LETTER);
    }

    @Benchmark
    public byte[] allSheetsOfTheDemo() {
        return Papers.pdf(printing);
    }
}
