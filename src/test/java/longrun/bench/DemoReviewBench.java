package longrun.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import longrun.draft.demo.DemoHouse;
import longrun.draft.entry.DraftEdit;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.review.FullPlanReader;
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

/**
 * The demo house reviewed whole, again and again with one entry changed to and fro: a section's length, or the tank's
 * gauge at the refill, of which the study of the tank is not the last one any more.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class DemoReviewBench {

    @Param({"/sections/0/legs", "/tank/refillAt"})
    public String changed;

    private Plan[] plans;
    private int turn;
    private Reviewer reviewer;

    @Setup
    public void prepare() throws JsonProcessingException {
        plans = changed.endsWith("legs")
                ? new Plan[] {
                    with(d -> d.put(changed, List.of("north 40 ft"))), with(d -> d.put(changed, List.of("north 41 ft")))
                }
                : new Plan[] {with(d -> d.put(changed, "25 %")), with(d -> d.put(changed, "30 %"))};
        reviewer = Reviewer.standard();
    }

    private static Plan with(Consumer<DraftEdit> change) throws JsonProcessingException {
        DraftEdit demo = new DraftEdit((ObjectNode) PlanReader.tree(DemoHouse.json()));
        change.accept(demo);
        return FullPlanReader.read(demo.root()).plan().orElseThrow();
    }

    @Benchmark
    public Review demo() {
        turn = 1 - turn;
        return reviewer.review(plans[turn], ReviewParts.ALL);
    }
}
