package longrun.checked.doubt;

import java.util.List;
import longrun.origin.Confidence;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import longrun.rules.limit.Threshold;

/**
 * A requirement of a rule that is held from memory: binding until the authority says otherwise.
 *
 * @param rule its title
 * @param required what must be
 * @param source the section it is remembered from
 */
public record MemoryRule(String rule, String required, String source) {

    /** What each of them ends with where it stands alone. */
    private static final String TAIL = " (" + Threshold.FROM_MEMORY + ")";

    public static List<MemoryRule> listAll() {
        return Explanations.all().stream().flatMap(e -> of(e).stream()).toList();
    }

    private static List<MemoryRule> of(Explanation e) {
        return e.sections().stream()
                .filter(s -> s.confidence() == Confidence.MEMORY)
                .map(s -> new MemoryRule(e.title(), s.required().replace(TAIL, ""), s.source()))
                .distinct()
                .toList();
    }
}
