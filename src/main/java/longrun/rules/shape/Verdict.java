package longrun.rules.shape;

import java.util.Optional;
import longrun.finding.Finding;
import longrun.rules.limit.State;

/**
 * What one rule says at one place.
 *
 * @param finding what a person is told; empty where the rule holds or another finding already says it
 */
public record Verdict(RuleState state, Optional<Finding> finding) {

    public static Verdict of(String rule, Place place, State state) {
        return new Verdict(new RuleState(rule, place.at(), place.pointer(), state), Optional.empty());
    }

    public static Verdict of(String rule, Place place, State state, Finding finding) {
        return new Verdict(new RuleState(rule, place.at(), place.pointer(), state), Optional.of(finding));
    }
}
