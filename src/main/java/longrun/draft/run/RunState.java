package longrun.draft.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import longrun.draft.sections.Allowance;
import longrun.finding.Finding;
import longrun.finding.ListWords;
import longrun.finding.Severity;

/**
 * The state of a run, in words: nothing typed, questions open, unknown, a wrong entry, or sized.
 *
 * @param words the state
 * @param because what it rests on, or what is missing; blank for nothing
 * @param unsized the word in place of a size that is not known yet
 * @param mustFix the number of must-fix findings
 * @param questions the number of open questions
 */
public record RunState(String words, String because, String unsized, int mustFix, int questions) {

    public static final String SIZED = "Sized, not approved";

    /**
     * The state of a run.
     *
     * @param wrong the entries not understood, in words
     * @param selected the index of the line being typed, whose blanks do not count as missing yet
     */
    public static RunState of(RunDraft draft, RunAnswer answer, List<String> wrong, int selected) {
        List<Line> lines = draft.lines();
        int mustFix = count(answer, Severity.MUST_FIX);
        List<String> open = open(lines, i -> true);
        int questions = open.size() + count(answer, Severity.NOTE);
        if (lines.isEmpty()) {
            return new RunState(
                    "Nothing to size yet",
                    "Enter the first line: what it feeds, its length and its Btu/h.",
                    "none yet",
                    0,
                    0);
        }
        if (!wrong.isEmpty()) {
            return new RunState(
                    "Waiting for an entry",
                    "Not understood: " + String.join("; ", wrong) + ". "
                            + (answer.lines().isEmpty()
                                    ? "Nothing is sized until it is corrected."
                                    : "What is shown is the answer from before."),
                    "waiting",
                    mustFix,
                    questions);
        }
        if (!open(lines, i -> i != selected && i != lines.size() - 1).isEmpty()) {
            return new RunState(
                    "Unknown",
                    sentence(open) + " No missing entry is taken as zero, so what depends on one is not known yet.",
                    "unknown",
                    mustFix,
                    questions);
        }
        if (!open.isEmpty()) {
            String count = open.size() == 1 ? "1 question open" : open.size() + " questions open";
            return new RunState(count, sentence(open), "not yet", mustFix, questions);
        }
        if (answer.lines().values().stream().anyMatch(l -> l.status() == RunAnswer.Status.UNKNOWN)) {
            return new RunState(
                    "Unknown",
                    "Something the size depends on is not known; see the questions below.",
                    "unknown",
                    mustFix,
                    questions);
        }
        if (answer.lines().values().stream().anyMatch(RunAnswer.LineAnswer::soFar)) {
            return new RunState(
                    "Sized so far",
                    "A load that may still be added to these lines is not known; it can make any of them larger.",
                    "sized",
                    mustFix,
                    questions);
        }
        if (answer.lines().values().stream().anyMatch(l -> l.status() == RunAnswer.Status.NO_SIZE)) {
            return new RunState(
                    "No size in the table",
                    "The run is longer than the table, or a load is more than its largest size carries.",
                    "no size",
                    mustFix,
                    questions);
        }
        if (mustFix > 0) {
            return new RunState(
                    mustFix + " must fix",
                    first(answer, f -> f.severity() == Severity.MUST_FIX)
                            + " A size alone does not make this a run that may be installed.",
                    "sized",
                    mustFix,
                    questions);
        }
        long doubted =
                answer.findings().stream().filter(RunState::mayChangeASize).count();
        if (doubted > 0) {
            return new RunState(
                    doubted == 1 ? "1 question open" : doubted + " questions open",
                    first(answer, RunState::mayChangeASize) + " The answer may change a size.",
                    "not yet",
                    mustFix,
                    questions);
        }
        return new RunState(SIZED, assumed(draft.allowance(), lines) + together(lines), "sized", mustFix, questions);
    }

    /** Pipe that two lines share carries both; entered as a part of each it would be sized too small. */
    private static String together(List<Line> lines) {
        for (String regulator : List.of(PressureStart.FIRST_REGULATOR, PressureStart.LINE_REGULATOR)) {
            List<String> leave = lines.stream()
                    .filter(l -> l.from().equals(regulator))
                    .map(Line::id)
                    .toList();
            if (leave.size() > 1) {
                return " Lines " + ListWords.all(leave)
                        + " each leave the regulator. If they share any pipe, enter the shared piece as a line before"
                        + " them.";
            }
        }
        return "";
    }

    private static String assumed(Allowance allowance, List<Line> lines) {
        return switch (allowance) {
            case NONE -> "Fittings are left out: the real run is longer than the one measured.";
            case FIFTH -> "A fifth is added for fittings, however many there are.";
            case COUNTED ->
                lines.stream().anyMatch(l -> l.pipe() == Pipe.CSST)
                        ? "Tees, and at each end a shutoff and a sediment trap, are counted; for turns, not described"
                                + " here, a fifth is added. Take the maker\u2019s table where the brand is known."
                        : "Tees, and at each end a shutoff and a sediment trap, are counted; for turns, not described"
                                + " here, a fifth is added.";
        };
    }

    /** The entries still missing. */
    private static List<String> open(List<Line> lines, IntPredicate which) {
        List<String> open = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line l = lines.get(i);
            if (!which.test(i)) {
                continue;
            }
            if (l.length().isBlank()) {
                open.add("the length of line " + l.id());
            }
            if (l.input().isBlank() && !l.branches()) {
                open.add("the Btu/h of line " + l.id() + ", or the lines it branches to");
            }
        }
        return open;
    }

    private static String sentence(List<String> open) {
        String first = String.join("; ", open.subList(0, Math.min(3, open.size())));
        String rest = open.size() > 3 ? "; and " + (open.size() - 3) + " more" : "";
        return "Not typed yet: " + first + rest + ".";
    }

    /** A question whose answer may change a size; turns that are not described are covered by the fifth. */
    private static boolean mayChangeASize(Finding f) {
        return f.severity() == Severity.NOTE && !f.rule().startsWith("section-");
    }

    private static String first(RunAnswer answer, Predicate<Finding> which) {
        return answer.findings().stream()
                .filter(which)
                .map(f -> (f.at().matches("at-.*|plan") ? "" : "Line " + f.at() + ": ") + f.found())
                .findFirst()
                .map(s -> s.endsWith(".") ? s : s + ".")
                .orElse("");
    }

    private static int count(RunAnswer answer, Severity severity) {
        return (int) answer.findings().stream()
                .map(Finding::severity)
                .filter(severity::equals)
                .count();
    }
}
