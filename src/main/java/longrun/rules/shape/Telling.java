package longrun.rules.shape;

import java.util.Optional;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.Severity;
import longrun.rules.limit.Threshold;

/**
 * What a rule tells of a place, before it is said of which: {@code {who}} stands for it, so that the same can be told of
 * several places at once.
 *
 * @param limit what is required there
 * @param place where it was found
 * @param field JSON pointer of the entry that mends it
 */
record Telling(
        Threshold limit,
        Severity severity,
        Place place,
        String found,
        String remedy,
        Optional<Question> question,
        String field) {

    /** As told of the place it was found at, of others, or of several at once; it stands where it was found. */
    Finding about(Place who) {
        Optional<Question> asked = question.map(q -> q.about(who));
        FindingBuilder builder = who.found(
                        FindingBuilder.finding(limit.name(), severity, place.at(), limit.citation()), found)
                .required(limit.required())
                .remedy(who.named(remedy).replace("{limit}", limit.limitText()));
        return asked.map(q -> builder.ask(q.whom(), q.text())).orElse(builder).atEntry(field);
    }
}
