package longrun.rules;

import java.util.List;
import longrun.finding.Finding;
import longrun.rules.shape.RuleState;

/**
 * What all rules say of a house.
 *
 * @param findings in the order of the plan
 * @param states every rule at every place it looks at
 */
public record RuleReport(List<Finding> findings, List<RuleState> states) {

    public RuleReport {
        findings = List.copyOf(findings);
        states = List.copyOf(states);
    }
}
