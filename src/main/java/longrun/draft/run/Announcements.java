package longrun.draft.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The facts of a run's answer for screen readers; the browser announces only those that have changed. */
public final class Announcements {

    private Announcements() {}

    /** The facts, by a name that stays the same. */
    public static Map<String, String> of(RunDraft draft, RunAnswer answer, RunState state) {
        Map<String, String> facts = new LinkedHashMap<>();
        List<Line> lines = draft.lines();
        for (Line line : lines) {
            Optional<RunAnswer.Sized> cell =
                    Optional.ofNullable(answer.lines().get(line.id())).flatMap(RunAnswer.LineAnswer::cell);
            cell.ifPresent(c -> facts.put(
                    "line " + line.id(),
                    "line " + line.id() + " " + c.size() + (line.pipe() == Pipe.CSST ? " EHD" : " inch") + ", "
                            + Math.round(c.sharePercent()) + " percent used"));
        }
        facts.put(
                "state",
                state.words().equals(RunState.SIZED)
                        ? "sized, not approved"
                        : state.words() + ", " + trimmed(state.because()));
        return facts;
    }

    private static String trimmed(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
