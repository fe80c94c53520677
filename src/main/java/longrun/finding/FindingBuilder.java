package longrun.finding;

import java.util.Optional;

/**
 * Makes a finding part by part; there is no other way to make one. The parts every finding must have are given at the start:
 * rule, severity, what it is about, and source.
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
     * @param at the id of the section, appliance, regulator or room it is about, or tank, site, plan, hot-water
     * @param citation where the requirement comes from
     */
    public static FindingBuilder finding(RuleName rule, Severity severity, String at, Citation citation) {
        return new FindingBuilder(rule, severity, at, citation);
    }

    /** What was found, with the value entered. */
    public FindingBuilder found(String text) {
        this.found = text;
        return this;
    }

    /** What was found, in words that already name what the finding is about. */
    public FindingBuilder foundNaming(String text) {
        this.named = true;
        return found(text);
    }

    /** What is required, with its unit. */
    public FindingBuilder required(String text) {
        this.required = text;
        return this;
    }

    /** What to do about it. */
    public FindingBuilder remedy(String text) {
        this.remedy = text;
        return this;
    }

    /** The question to ask. */
    public FindingBuilder ask(AskWhom whom, String question) {
        return ask(whom, Optional.of(question));
    }

    /** The question to ask, where there is one. */
    public FindingBuilder ask(AskWhom whom, Optional<String> question) {
        this.ask = question;
        this.askWhom = question.map(q -> whom);
        return this;
    }

    /**
     * Makes the finding.
     *
     * @param field the JSON pointer of the entry to change
     * @throws IllegalStateException if {@link #found} was left blank
     */
    public Finding atEntry(String field) {
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
