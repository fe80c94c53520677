package longrun.plan.json;

import java.util.List;
import java.util.Optional;
import longrun.plan.Plan;

/**
 * What came of reading a plan.
 *
 * @param plan the plan, where it could be read
 * @param errors everything that is wrong, in the order of the document; empty where there is a plan
 * @param unread pointers of entries that no field of the format has; kept in the document, used by nothing
 * @param written where the document has what the plan holds
 */
public record Reading(Optional<Plan> plan, List<PlanError> errors, List<String> unread, AsWritten written) {

    public Reading {
        errors = List.copyOf(errors);
        unread = List.copyOf(unread);
    }
}
