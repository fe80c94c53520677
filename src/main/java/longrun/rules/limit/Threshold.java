package longrun.rules.limit;

import java.util.Optional;
import longrun.finding.Citation;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.Distance;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;

/**
 * What one rule requires under one code.
 *
 * @param name the public name of the rule
 * @param variant which case of the rule, empty for its main case
 * @param code the profile; empty where one text holds for all
 * @param limit the length, where the bound is one
 * @param limitText the limit as printed, with its unit
 * @param requirement in words, with {@code {limit}} where the limit goes
 * @param citation where it is printed
 * @param fact id of the rule fact it rests on
 */
public record Threshold(
        RuleName name,
        String variant,
        Optional<CodeProfile> code,
        Severity severity,
        Bound bound,
        Optional<Length> limit,
        String limitText,
        String requirement,
        Citation citation,
        String fact) {

    /** Added to what rests on memory; the severity stays. */
    public static final String FROM_MEMORY = "held from memory: treat as binding until the authority says otherwise";

    /** The rule's public name as written. */
    public String rule() {
        return name.value();
    }

    /** Publication and section. */
    public String reference() {
        return citation.reference();
    }

    /** The edition of that publication; empty where it is not known. */
    public String edition() {
        return citation.edition();
    }

    /** How sure the limit is. */
    public Confidence confidence() {
        return citation.confidence();
    }

    /** What must be, as a person reads it. */
    public String required() {
        String words = requirement.indexOf('{') < 0 ? requirement : requirement.replace("{limit}", limitText);
        return confidence() == Confidence.MEMORY ? words + " (" + FROM_MEMORY + ")" : words;
    }

    /** How a person names the source. */
    public String source() {
        return edition().isEmpty() ? reference() : reference() + ", " + edition();
    }

    /**
     * A limit that is no length, such as a wire's size or a temperature.
     *
     * @throws IllegalStateException if the row holds no such limit
     */
    public <Q extends Quantity> Q limitIn(Measure<Q> measure) {
        try {
            return measure.read(limitText);
        } catch (NotAQuantity e) {
            throw new IllegalStateException(name + " " + variant + " has no such limit: " + limitText, e);
        }
    }

    /** Whether it asks anything. */
    public boolean asks() {
        return bound != Bound.NONE;
    }

    /** The state of a rule whose measured distance is this. */
    public State test(Distance distance) {
        double measured = distance.length().rounded().feet();
        double bounded = limit.map(l -> l.rounded().feet()).orElse(0.0);
        return switch (bound) {
            case LEAST -> measured >= bounded ? State.HOLDS : distance.orMore() ? State.ASKS : State.BROKEN;
            case MOST ->
                measured > bounded || (distance.orMore() && measured >= bounded)
                        ? State.BROKEN
                        : distance.orMore() ? State.ASKS : State.HOLDS;
            case ANY -> measured > 0 || distance.orMore() ? State.HOLDS : State.BROKEN;
            case YES, NONE -> State.HOLDS;
        };
    }

    /** The same requirement with a local limit in its place. */
    public Threshold amended(Length local, String text, String source) {
        Bound binding = bound == Bound.ANY ? Bound.LEAST : bound;
        String words = bound == Bound.ANY ? "at least {limit}" : requirement;
        return new Threshold(
                name,
                variant,
                code,
                severity,
                binding,
                Optional.of(local),
                text,
                words,
                new Citation(source + " (local amendment) in place of " + source(), "", Confidence.OWN),
                fact);
    }

    /** Whether this limit lets through what the other does not. */
    public boolean isLooserThan(Threshold other) {
        double mine = limit.map(Length::feet).orElse(0.0);
        double theirs = other.limit.map(Length::feet).orElse(0.0);
        return bound == Bound.MOST ? mine > theirs : mine < theirs;
    }
}
