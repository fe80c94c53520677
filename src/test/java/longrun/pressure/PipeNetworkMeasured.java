package longrun.pressure;

import java.util.List;
import java.util.stream.LongStream;
import longrun.browser.Browsing;
import org.junit.jupiter.api.Test;

/**
 * The largest tree among random houses, by a general engine for pipe networks and by the program, time beside time. The
 * engine is solved again in an open network, the program's chain is worked again, both many times. Run by name.
 */
class PipeNetworkMeasured extends Browsing {

    private static final int TIMES = 20_000;

    @Override
    protected String address(String path) {
        return path;
    }

    @Test
    void timeOfATreeBesideAGeneralEngine() {
        LowStage largest = LongStream.range(300, 600)
                .boxed()
                .flatMap(seed -> LowStage.of(seed).stream())
                .max((a, b) -> Integer.compare(
                        a.stage().sections().size(), b.stage().sections().size()))
                .orElseThrow();
        double engine = new PipeNetworkEngine(open("about:blank", 800))
                .solve(List.of(largest.network()), TIMES)
                .get(0)
                .millis();
        double ours = 0;
        for (int round = 0; round < 3; round++) { // the last, once the compiler is through with it
            long begin = System.nanoTime();
            for (int n = 0; n < TIMES; n++) {
                largest.work();
            }
            ours = (System.nanoTime() - begin) / 1e6 / TIMES;
        }
        System.out.printf(
                "%d sections: a general engine %.4f ms, the program (with and without droop) %.4f ms%n",
                largest.stage().sections().size(), engine, ours);
    }
}
