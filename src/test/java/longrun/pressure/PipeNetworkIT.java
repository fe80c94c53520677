package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import longrun.browser.Browsing;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.pressure.PipeNetworkEngine.Solved;
import org.junit.jupiter.api.Test;

/** The program's pressures against a general engine for networks of pipes under pressure. */
class PipeNetworkIT extends Browsing {

    private static final SecondWay WAY = SecondWay.get("pipe-network");

    /** Less than a gauge shows: of a smaller loss the exponents' difference says nothing. */
    private static final double SHOWN_IN_WC = 0.02;

    @Override
    protected String address(String path) {
        return path;
    }

    @Test
    void aGeneralEngineForPipeNetworksFindsTheSamePressures() {
        long houses = Ran.count("pipe-network");
        List<LowStage> stages = LongStream.range(WAY.seed(), WAY.seed() + houses)
                .boxed()
                .flatMap(seed -> LowStage.of(seed).stream())
                .toList();
        List<Solved> solved = new PipeNetworkEngine(open("about:blank", 800))
                .solve(stages.stream().map(LowStage::network).toList(), 1);
        double worst = 0;
        for (int n = 0; n < stages.size(); n++) {
            LowStage stage = stages.get(n);
            for (int k = 0; k < stage.lostInWc().size(); k++) {
                double theirs = stage.setting().inWc() - solved.get(n).heads().get(k);
                double apart = 100 * Math.abs(stage.lostInWc().get(k) - theirs) / Math.max(theirs, SHOWN_IN_WC);
                assertThat(apart).as(stage.at()).isLessThan(WAY.within());
                worst = Math.max(worst, apart);
            }
        }
        assertThat(stages).as("stages compared").hasSizeGreaterThan((int) houses / 2);
        Ran.told("pipe-network", houses, WAY.seed(), worst);
    }
}
