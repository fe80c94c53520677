package longrun.finding;

import java.util.Optional;

/**
 * Puts a finding together by naming its parts, and the one way to make one. What every finding must have is asked for
 * at the start: the rule, what it comes to, the place and the source.
 */
public final class FindingBuilder {

    private final RuleName rule;
    private final Severity severity;
    private final String at;
    private final Citation citation;
    private String found = "";
    private boolean named;
    private String required = "";
    private String remedy = "";
    private Optional<String> ask = Optional.empty();
    private Optional<AskWhom> askWhom = Optional.empty();

    private FindingBuilder(RuleName rule, Severity severity, String at, Citation citation) {
        this.rule = rule;
        this.severity = severity;
        this.at = at;
        this.citation = citation;
    }

    /**
     * Begins a finding.
     *
     * @param at the id it stands at, or tank, site, plan, hot-water
     * @param citation where what must be is from
     */
    public static FindingBuilder finding(RuleName rule, Severity severity, String at, Citation citation) {
        return new FindingBuilder(rule, severity, at, citation);
    }

    public FindingBuilder found(String text) {
        this.found = text;
        return this;
    }

    /** What was found, in words that name what it stands at. */
    public FindingBuilder foundNaming(String text) {
        this.named = true;
        return found(text);
    }

    public FindingBuilder required(String text) {
        this.required = text;
        return this;
    }

    public FindingBuilder remedy(String text) {
        this.remedy = text;
        return this;
    }

    public FindingBuilder ask(AskWhom whom, String question) {
        return ask(whom, Optional.of(question));
    }

    /** The question to take along where there is one. */
    public FindingBuilder ask(AskWhom whom, Optional<String> question) {
        this.ask = question;
        this.askWhom = question.map(q -> whom);
        return this;
    }

    /**
     * The finding, with the entry that mends it as a JSON pointer.
     *
     * @throws IllegalStateException if nothing is said to be found
     */
    public Finding at(String field) {
        if (found.isBlank()) {
            throw new IllegalStateException("a finding of " + rule + " says nothing");
        }
        return new Finding(
                rule,
                severity,
                at,
                found,
                named,
                required,
                citation,
                remedy,
                ask,
                askWhom,
                field,
                Optional.empty(),
                false);
    }
}
