package longrun.rules.explanation;

import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.plan.choice.CodeProfile;

/**
 * What a rule is for, for a person: the screens and the developers' notes show the same text.
 *
 * @param rule its public name
 * @param topic the head it stands under
 * @param title one line
 * @param whatCanHappen if it is broken and ignored
 * @param sections what it rests on, at least one
 * @param wrong a house that breaks it and nothing else
 * @param right the same house keeping it and everything else
 */
public record Explanation(
        String rule,
        String topic,
        String title,
        String whatCanHappen,
        List<Section> sections,
        Example wrong,
        Example right) {

    /**
     * Publication and section a rule rests on.
     *
     * @param code the profile it holds under; empty where one text holds for all
     * @param required what must be, in words
     * @param source publication, section and edition, or "common practice"
     */
    public record Section(Optional<CodeProfile> code, String required, String source, Confidence confidence) {}

    /**
     * A house as an example.
     *
     * @param entries what is entered otherwise than in the house of all examples: one JSON object, pointer to value
     * @param plan the whole house as a plan, JSON
     */
    public record Example(String entries, String plan) {}
}
