package longrun.checked.doubt;

import java.util.List;
import longrun.origin.Confidence;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import longrun.rules.limit.Threshold;

/**
 * A requirement of a rule that is quoted from memory. It is binding until the authority says otherwise.
 *
 * @param rule the title of the rule
 * @param required what is required
 * @param source the section it is remembered from
 */
public record RequirementFromMemory(String rule, String required, String source) {

    /** The remark that ends each of them where it is shown alone. */
    private static final String TAIL = " (" + Threshold.FROM_MEMORY + ")";

    /** All requirements quoted from memory. */
    public static List<RequirementFromMemory> listAll() {
        return Explanations.all().stream().flatMap(e -> of(e).stream()).toList();
    }

    private static List<RequirementFromMemory> of(Explanation e) {
        return e.sections().stream()
                .filter(s -> s.confidence() == Confidence.MEMORY)
                .map(s -> new RequirementFromMemory(e.title(), s.required().replace(TAIL, ""), s.source()))
                .distinct()
                .toList();
    }
}
