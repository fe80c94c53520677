package longrun.draft.run;

import java.util.List;
import java.util.Map;
import longrun.draft.entry.DraftValue;
import longrun.draft.sections.Allowance;

/** Sizes a run as typed. */
public interface Sizer {

    /** An entry that cannot be read, and the message. */
    record EntryError(String pointer, String message) {}

    /**
     * Either an answer, or the entries that prevent one.
     *
     * @param others the answers with the other fitting allowances
     * @param errors the entries that cannot be read; none where there is an answer
     */
    record Result(RunAnswer answer, Map<Allowance, RunAnswer> others, List<EntryError> errors) {
        public static final Result NONE = new Result(RunAnswer.NOTHING, Map.of(), List.of());
    }

    /** Sizes the run of a plan. */
    Result size(DraftValue plan);
}
