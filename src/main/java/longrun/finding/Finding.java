package longrun.finding;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longrun.origin.Confidence;

/**
 * One thing found in a plan.
 *
 * @param name the rule's public name
 * @param severity what happens if it is true and ignored
 * @param at the id it stands at, or tank, site, plan, hot-water
 * @param found what was found, with the value entered
 * @param named whether that names what it stands at, so that nobody need put its name before it
 * @param required what must be, with its unit
 * @param citation where the requirement is from
 * @param remedy what mends it
 * @param ask the question to take along, where someone else must answer
 * @param askWhom who can answer it
 * @param field JSON pointer of the entry that mends it
 * @param answer what whoever decides has said of it; the severity stays
 * @param answerLeftOut whether an answer was given that nobody can give
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
        return like(remedy, field, Optional.of(given), answerLeftOut);
    }

    /**
     * This finding beside an answer that nobody can give: it stays open, and that is told once.
     *
     * @param told put behind what mends it
     */
    public Finding leavingAnswerOut(String told) {
        return answerLeftOut ? this : like(remedy + told, field, answer, true);
    }

    /** This finding with other words for what mends it. */
    public Finding withRemedy(String other) {
        return like(other, field, answer, answerLeftOut);
    }

    /** This finding with another pointer to the entry that mends it. */
    public Finding withField(String other) {
        return like(remedy, other, answer, answerLeftOut);
    }

    private Finding like(String nowRemedy, String nowField, Optional<Answer> given, boolean leftOut) {
        return new Finding(
                name, severity, at, found, named, required, citation, nowRemedy, ask, askWhom, nowField, given,
                leftOut);
    }

    /** Whether it counts among the open ones: an answer, accepted or refused, takes it out of that count. */
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

    /** What was found, and what mends it, is a sentence; it begins with a capital, whichever rule wrote it. */
    private static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
