package longrun.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import longrun.Samples;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.review.json.ReviewJson;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The sample plan, from its text to the text of its review. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ReviewBench {

    @Param({"PIPING", "ALL"})
    public ReviewParts parts;

    private String text;
    private Reviewer reviewer;

    @Setup
    public void prepare() {
        text = Samples.text("sample-plan.json");
        reviewer = Reviewer.standard();
    }

    @Benchmark
    public String samplePlan() {
        Reading reading = FullPlanReader.read(text);
        return ReviewJson.write(reviewer.review(reading.plan().orElseThrow(), parts), List.of(), false)
                .toString();
    }
}
