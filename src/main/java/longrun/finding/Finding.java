package longrun.finding;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longrun.origin.Confidence;

/**
 * A finding in a plan.
 *
 * @param name the rule's public name
 * @param severity what happens if it is true and ignored
 * @param at the id of the section, appliance, regulator or room it is about, or tank, site, plan, hot-water
 * @param found what was found, with the value entered
 * @param named whether {@code found} already names what it is about, so that no list need put the name before it
 * @param required what is required, with its unit
 * @param citation where the requirement comes from
 * @param remedy what to do about it
 * @param ask the question, where somebody must be asked
 * @param askWhom who can answer the question
 * @param field JSON pointer of the entry to change
 * @param answer the decision on it; the severity stays the same
 * @param answerLeftOut whether an answer was entered that nobody may give
 */
public record Finding(
        RuleName name,
        Severity severity,
        String at,
        String found,
        boolean named,
        String required,
        Citation citation,
        String remedy,
        Optional<String> ask,
        Optional<AskWhom> askWhom,
        String field,
        Optional<Answer> answer,
        boolean answerLeftOut) {

    /** The rule's public name as written. */
    public String rule() {
        return name.value();
    }

    /** Publication and section, or "common practice". */
    public String reference() {
        return citation.reference();
    }

    /** The edition of that publication; empty where there is none. */
    public String edition() {
        return citation.edition();
    }

    /** How sure the requirement is. */
    public Confidence confidence() {
        return citation.confidence();
    }

    /** This finding with the answer it was given. */
    public Finding withAnswer(Answer given) {
        return copy(remedy, field, Optional.of(given), answerLeftOut);
    }

    /**
     * This finding, still open although an answer was entered, since nobody may give that answer. It says so once.
     *
     * @param told the sentence added to the remedy
     */
    public Finding withAnswerLeftOut(String told) {
        return answerLeftOut ? this : copy(remedy + told, field, answer, true);
    }

    /** This finding with another remedy. */
    public Finding withRemedy(String other) {
        return copy(other, field, answer, answerLeftOut);
    }

    /** This finding with another JSON pointer to the entry to change. */
    public Finding withField(String other) {
        return copy(remedy, other, answer, answerLeftOut);
    }

    private Finding copy(String nowRemedy, String nowField, Optional<Answer> given, boolean leftOut) {
        return new Finding(
                name, severity, at, found, named, required, citation, nowRemedy, ask, askWhom, nowField, given,
                leftOut);
    }

    /** Whether it is open: an answer, accepted or refused, closes it. */
    public boolean isOpen() {
        return answer.isEmpty();
    }

    public Finding {
        Objects.requireNonNull(name);
        Objects.requireNonNull(citation);
        Objects.requireNonNull(at);
        Objects.requireNonNull(field);
        found = sentence(found);
        remedy = remedy.isBlank() || remedy.endsWith(".") ? sentence(remedy) : sentence(remedy) + ".";
    }

    /** The text with a capital at its start, since each rule writes what it found and the remedy as it likes. */
    private static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
