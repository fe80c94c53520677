package longrun.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.concurrent.TimeUnit;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.review.Chains;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
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

/** A review of the piping of a tree of sections, against reading the same plan's JSON into a tree of Jackson's. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class PipingReviewBench {

    @Param({"1000", "10000", "100000"})
    public int sections;

    private String text;
    private Plan plan;
    private Reviewer reviewer;

    @Setup
    public void prepare() {
        text = Chains.treeText(sections);
        plan = Chains.tree(sections);
        reviewer = Reviewer.standard();
    }

    @Benchmark
    public JsonNode readIntoATree() throws JsonProcessingException {
        return PlanReader.tree(text);
    }

    @Benchmark
    public Review reviewOfThePiping() {
        return reviewer.review(plan, ReviewParts.PIPING);
    }
}
