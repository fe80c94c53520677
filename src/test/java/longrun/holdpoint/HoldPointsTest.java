package longrun.holdpoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Consumer;
import longrun.Samples;
import longrun.finding.Severity;
import longrun.plan.choice.ReadingKind;
import longrun.plan.json.PlanReader;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.junit.jupiter.api.Test;

/** The points before the valve: their order is common practice; nothing is done over a fault without a written reason. */
class HoldPointsTest {

    private static HoldPoints of(Consumer<ObjectNode> change) throws Exception {
        ObjectNode plan = (ObjectNode) PlanReader.tree(Samples.text("sample-plan.json"));
        change.accept(plan);
        return HoldPoints.of(Reviewer.standard().review(Samples.plan(plan.toString()), ReviewParts.ALL));
    }

    private static void naturalGas(ObjectNode plan) {
        ((ObjectNode) plan.at("/appliances/0")).put("gas", "natural");
    }

    private static ObjectNode record(ObjectNode plan, String point) {
        return plan.withArray("holdPoints").addObject().put("point", point).put("done", true);
    }

    private static HoldPoints.State state(HoldPoints all, HoldPoint point) {
        return all.points().stream().filter(s -> s.point() == point).findFirst().orElseThrow();
    }

    @Test
    void theGasIsSettledFirstAndTheBurnersAreLitLast() {
        assertThat(HoldPoint.values()).startsWith(HoldPoint.GAS_TYPE, HoldPoint.CAPS, HoldPoint.TEST);
        assertThat(HoldPoint.values()).endsWith(HoldPoint.PURGE, HoldPoint.PRESSURES, HoldPoint.RELIGHT);
    }

    @Test
    void everyOpenFindingStandsBeforeOnePoint() throws Exception {
        HoldPoints all = of(HoldPointsTest::naturalGas);
        long open = Reviewer.standard()
                .review(Samples.sample(), ReviewParts.ALL)
                .findings()
                .size();
        long shown = all.points().stream().mapToLong(s -> s.open().size()).sum();
        assertThat(shown).isGreaterThanOrEqualTo(open);
        assertThat(state(all, HoldPoint.GAS_TYPE).open())
                .anyMatch(f -> f.rule().equals("gas-type") && f.severity() == Severity.MUST_FIX);
    }

    @Test
    void aPointBehindAFaultIsNotDoneWithoutAReason() throws Exception {
        HoldPoints without = of(plan -> {
            naturalGas(plan);
            record(plan, "leak-check").put("who", "supplier").put("date", "2026-09-01");
        });
        HoldPoints.State leak = state(without, HoldPoint.LEAK_CHECK);
        assertThat(leak.record()).isEqualTo(HoldPoints.Record.REASON_MISSING);
        assertThat(leak.recorded()).contains("does not count as done");
        assertThat(without.done()).isZero();

        HoldPoints with = of(plan -> {
            naturalGas(plan);
            record(plan, "leak-check")
                    .put("who", "supplier")
                    .put("reason", "range not connected yet, its outlet capped");
        });
        assertThat(state(with, HoldPoint.LEAK_CHECK).record()).isEqualTo(HoldPoints.Record.DONE_WITH_REASON);
        assertThat(state(with, HoldPoint.LEAK_CHECK).recorded()).contains("range not connected yet");
    }

    @Test
    void aPointAheadOfEveryFaultIsDoneByWhoSaysSo() throws Exception {
        HoldPoints all =
                of(plan -> record(plan, "gas-type").put("who", "fitter").put("date", "2026-09-01"));
        HoldPoints.State gas = state(all, HoldPoint.GAS_TYPE);
        assertThat(gas.mustFix()).isZero();
        assertThat(gas.record()).isEqualTo(HoldPoints.Record.DONE);
        assertThat(gas.recorded()).contains("by fitter").contains("2026-09-01");
        assertThat(all.next().orElseThrow().point()).isEqualTo(HoldPoint.CAPS);
    }

    @Test
    void aPointThatNobodyRecordedIsOpen() throws Exception {
        HoldPoints all = of(plan -> {});
        assertThat(all.points()).allMatch(s -> s.record() == HoldPoints.Record.OPEN);
        assertThat(all.points()).noneMatch(s -> s.recorded().toLowerCase().contains("safe"));
    }

    @Test
    void whatTheGaugeShowedStandsBesideWhatIsPredicted() throws Exception {
        HoldPoints all = of(plan -> plan.withArray("readings")
                .addObject()
                .put("at", "R2")
                .put("what", "lock-up")
                .put("pressure", "12.5 in w.c."));
        List<PredictedPressure> lockUp = all.pressures().stream()
                .filter(p -> p.at().equals("R2") && p.kind() == ReadingKind.LOCK_UP)
                .toList();
        assertThat(lockUp).hasSize(1);
        assertThat(lockUp.get(0).predicted().orElseThrow().inWc()).isGreaterThan(11);
        assertThat(lockUp.get(0).measured().orElseThrow().inWc()).isCloseTo(12.5, within(1e-9));
    }
}
