package longrun.rules;

import java.util.Optional;
import longrun.finding.Finding;

/**
 * What one rule says at one place.
 *
 * @param finding what a person is told; empty where the rule holds or another finding already says it
 */
record Verdict(RuleState state, Optional<Finding> finding) {

    static Verdict of(String rule, Place place, State state) {
        return new Verdict(new RuleState(rule, place.at(), place.pointer(), state), Optional.empty());
    }

    static Verdict of(String rule, Place place, State state, Finding finding) {
        return new Verdict(new RuleState(rule, place.at(), place.pointer(), state), Optional.of(finding));
    }
}
