package longrun.finding;

import java.util.Objects;
import java.util.Optional;
import longrun.origin.Confidence;

/**
 * One thing found in a plan.
 *
 * @param rule the public rule name
 * @param severity what happens if it is true and ignored
 * @param at the id it stands at, or tank, site, plan, hot-water
 * @param found what was found, with the value entered
 * @param required what must be, with its unit
 * @param reference publication and section, or "common practice"
 * @param edition of that publication; empty where there is none
 * @param confidence of the threshold
 * @param remedy what mends it
 * @param ask the question to take along, where someone else must answer
 * @param askWhom who can answer it
 * @param field JSON pointer of the entry that mends it
 */
public record Finding(
        String rule,
        Severity severity,
        String at,
        String found,
        String required,
        String reference,
        String edition,
        Confidence confidence,
        String remedy,
        Optional<String> ask,
        Optional<AskWhom> askWhom,
        String field) {

    public Finding {
        Objects.requireNonNull(rule);
        Objects.requireNonNull(at);
        Objects.requireNonNull(field);
    }
}
