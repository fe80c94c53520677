package longrun.rules;

/**
 * What a rule is for, for a person: the screens and the developers' notes show the same text.
 *
 * @param rule its public name
 * @param topic the head it stands under
 * @param title one line
 * @param whatCanHappen if it is broken and ignored
 * @param wrong a plan that breaks it, as JSON
 * @param right a plan that keeps it, as JSON
 */
public record Explanation(String rule, String topic, String title, String whatCanHappen, String wrong, String right) {}
