package longrun.draft.run;

import java.util.List;
import java.util.Map;
import longrun.draft.entry.Entered;
import longrun.draft.sections.Allowance;

/** Sizes a run as typed. */
public interface Sizer {

    /** A plan that cannot be read, entry by entry. */
    record EntryError(String pointer, String message) {}

    /**
     * Either an answer or the entries that keep one from being made.
     *
     * @param others what the other positions of the fitting switch would give
     * @param errors empty where there is an answer
     */
    record Result(RunAnswer answer, Map<Allowance, RunAnswer> others, List<EntryError> errors) {
        public static final Result NONE = new Result(RunAnswer.NOTHING, Map.of(), List.of());
    }

    Result size(Entered plan);
}
