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
 * The hold points of a house before its tank valve is opened: for each, the open findings and what was recorded. It never
 * says that a house is safe, only what was recorded, by whom, and what is open.
 *
 * @param points the hold points in order
 * @param tests the test of each side
 * @param pressures those to be measured with a gauge
 */
public record HoldPoints(List<State> points, List<SideTest> tests, List<PredictedPressure> pressures) {

    /** What is recorded at a point. */
    public enum Record {
        /** Nobody has marked it done. */
        OPEN,
        /** Marked done with no must-fix finding open at this point or an earlier one. */
        DONE,
        /** Marked done despite an open must-fix finding, with a written reason. */
        DONE_WITH_REASON,
        /** Marked done despite an open must-fix finding, without a reason; it does not count as done. */
        REASON_MISSING
    }

    /**
     * One hold point of a house.
     *
     * @param open the open findings of this point, worst first; answered findings are not among them
     * @param mustFix how many must-fix findings are open at this point and at all earlier ones
     * @param record what is recorded at it
     * @param who who did it, as entered; empty where not entered
     * @param date the date it was done; empty where not entered
     * @param measured what was found or measured, as entered
     * @param reason why it was marked done despite a must-fix finding, as entered
     */
    public record State(
            HoldPoint point,
            List<Finding> open,
            int mustFix,
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
                case DONE_WITH_REASON -> "Recorded as done" + byWhom() + " Reason: " + reason.strip();
                case REASON_MISSING ->
                    "Marked done, but " + mustFix + " must-fix " + (mustFix == 1 ? "finding is" : "findings are")
                            + " open and no reason is written, so it does not count as done.";
            };
        }

        private String byWhom() {
            return (who.isBlank() ? "; who did it is not entered" : " by " + who.strip())
                    + date.map(d -> ", " + d + ".").orElse(", without a date.");
        }
    }

    public HoldPoints {
        points = List.copyOf(points);
        tests = List.copyOf(tests);
        pressures = List.copyOf(pressures);
    }

    /** The hold points of a reviewed plan. */
    public static HoldPoints of(Review review) {
        Map<HoldPoint, List<Finding>> open = new EnumMap<>(HoldPoint.class);
        review.findings().stream()
                .filter(Finding::isOpen)
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .forEach(f -> open.computeIfAbsent(HoldPoint.of(f), k -> new ArrayList<>())
                        .add(f));
        List<State> states = new ArrayList<>();
        int mustFix = 0;
        for (HoldPoint p : HoldPoint.values()) {
            List<Finding> own = List.copyOf(open.getOrDefault(p, List.of()));
            mustFix += (int)
                    own.stream().filter(f -> f.severity() == Severity.MUST_FIX).count();
            states.add(state(review.plan(), p, own, mustFix));
        }
        return new HoldPoints(states, TestPlan.of(review.pressures()), PredictedPressure.of(review.pressures()));
    }

    private static State state(Plan plan, HoldPoint point, List<Finding> open, int mustFix) {
        Optional<Plan.HoldPoint> entered = plan.holdPoints().stream()
                .filter(h -> h.point().is(point.written()))
                .reduce((a, b) -> b);
        String reason = entered.map(e -> text(e.reason())).orElse("");
        boolean done = entered.filter(e -> e.done().is(true)).isPresent();
        Record record = !done
                ? Record.OPEN
                : mustFix == 0 ? Record.DONE : reason.isBlank() ? Record.REASON_MISSING : Record.DONE_WITH_REASON;
        return new State(
                point,
                open,
                mustFix,
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
