package longrun.ui.run;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Sizes a run as typed. */
interface Sizer {

    /** A plan that cannot be read, entry by entry. */
    record EntryError(String pointer, String message) {}

    /**
     * Either an answer or the entries that keep one from being made.
     *
     * @param errors empty where there is an answer
     */
    record Result(RunAnswer answer, List<EntryError> errors) {}

    Result size(ObjectNode plan);
}
