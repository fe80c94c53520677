package longrun.holdpoint;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.pressuretest.SideTest;
import longrun.pressuretest.TestPlan;
import longrun.review.Review;

/**
 * How a house stands before its valve: each point with what is open for it and what was recorded. It never says that a
 * house is safe; it says what was recorded, by whom, and what is open.
 *
 * @param points in their order
 * @param tests the test of each side
 * @param pressures to be read off a gauge
 */
public record HoldPoints(List<State> points, List<SideTest> tests, List<Predicted> pressures) {

    /** What is recorded of a point. */
    public enum Record {
        /** Nobody has marked it done. */
        OPEN,
        /** Marked done with nothing before it that must be mended. */
        DONE,
        /** Marked done over something that must be mended, with the reason written. */
        DONE_WITH_REASON,
        /** Marked done over something that must be mended, without a reason: not taken as done. */
        REASON_MISSING
    }

    /**
     * One point.
     *
     * @param open the findings that stand before this point, worst first; answered ones are not open
     * @param inTheWay how many of those at this point and before it must be mended
     * @param record what is recorded of it
     * @param who did it, as entered; empty where not entered
     * @param date the day; empty where not entered
     * @param measured what was found or measured, as entered
     * @param reason why it was marked done over something that must be mended
     */
    public record State(
            HoldPoint point,
            List<Finding> open,
            int inTheWay,
            Record record,
            String who,
            Optional<LocalDate> date,
            String measured,
            String reason) {

        /** What is recorded, in a sentence. */
        public String recorded() {
            return switch (record) {
                case OPEN -> "Not recorded as done.";
                case DONE -> "Recorded as done" + byWhom();
                case DONE_WITH_REASON -> "Recorded as done" + byWhom() + " Reason given: " + reason.strip();
                case REASON_MISSING ->
                    "Marked done, but " + inTheWay + " that must be mended " + (inTheWay == 1 ? "stands" : "stand")
                            + " before it and no reason is written: not taken as done.";
            };
        }

        private String byWhom() {
            return (who.isBlank() ? ", by whom is not entered" : " by " + who.strip())
                    + date.map(d -> ", " + d + ".").orElse(", no date.");
        }
    }

    public HoldPoints {
        points = List.copyOf(points);
        tests = List.copyOf(tests);
        pressures = List.copyOf(pressures);
    }

    public static HoldPoints of(Review review) {
        Map<HoldPoint, List<Finding>> open = new EnumMap<>(HoldPoint.class);
        review.findings().stream()
                .filter(Finding::isOpen)
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .forEach(f -> open.computeIfAbsent(HoldPoint.of(f), k -> new ArrayList<>())
                        .add(f));
        List<State> states = new ArrayList<>();
        int inTheWay = 0;
        for (HoldPoint p : HoldPoint.values()) {
            List<Finding> own = List.copyOf(open.getOrDefault(p, List.of()));
            inTheWay += (int)
                    own.stream().filter(f -> f.severity() == Severity.MUST_FIX).count();
            states.add(state(review.plan(), p, own, inTheWay));
        }
        return new HoldPoints(states, TestPlan.of(review.pressures()), Predicted.of(review.pressures()));
    }

    private static State state(Plan plan, HoldPoint point, List<Finding> open, int inTheWay) {
        Optional<Plan.HoldPoint> entered = plan.holdPoints().stream()
                .filter(h -> h.point().is(point.written()))
                .reduce((a, b) -> b);
        String reason = entered.map(e -> text(e.reason())).orElse("");
        boolean done = entered.filter(e -> e.done().is(true)).isPresent();
        Record record = !done
                ? Record.OPEN
                : inTheWay == 0 ? Record.DONE : reason.isBlank() ? Record.REASON_MISSING : Record.DONE_WITH_REASON;
        return new State(
                point,
                open,
                inTheWay,
                record,
                entered.map(e -> text(e.who())).orElse(""),
                entered.flatMap(e -> e.date().findValue()),
                entered.map(e -> text(e.measured())).orElse(""),
                reason);
    }

    private static String text(Fact<String> fact) {
        return fact.findValue().orElse("");
    }

    /** How many points are recorded as done, with a reason where one is needed. */
    public long done() {
        return points.stream()
                .filter(s -> s.record() == Record.DONE || s.record() == Record.DONE_WITH_REASON)
                .count();
    }

    /** The first point that is not recorded as done; empty where every one is. */
    public Optional<State> next() {
        return points.stream()
                .filter(s -> s.record() == Record.OPEN || s.record() == Record.REASON_MISSING)
                .findFirst();
    }
}
