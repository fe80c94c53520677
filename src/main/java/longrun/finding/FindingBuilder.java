package longrun.finding;

import java.util.Optional;
import longrun.origin.Confidence;

/** Puts a finding together by naming its parts. */
public final class FindingBuilder {

    private final String rule;
    private final Severity severity;
    private final String at;
    private String found = "";
    private String required = "";
    // Without a source it is held from memory, never from print.
    private String reference = "common practice";
    private String edition = "";
    private Confidence confidence = Confidence.MEMORY;
    private String remedy = "";
    private Optional<String> ask = Optional.empty();
    private Optional<AskWhom> askWhom = Optional.empty();
    private String field = "";

    private FindingBuilder(String rule, Severity severity, String at) {
        this.rule = rule;
        this.severity = severity;
        this.at = at;
    }

    public static FindingBuilder finding(String rule, Severity severity, String at) {
        return new FindingBuilder(rule, severity, at);
    }

    public FindingBuilder found(String text) {
        this.found = text;
        return this;
    }

    public FindingBuilder required(String text) {
        this.required = text;
        return this;
    }

    public FindingBuilder reference(String publicationAndSection, String edition, Confidence confidence) {
        this.reference = publicationAndSection;
        this.edition = edition;
        this.confidence = confidence;
        return this;
    }

    public FindingBuilder remedy(String text) {
        this.remedy = text;
        return this;
    }

    public FindingBuilder ask(AskWhom whom, String question) {
        this.ask = Optional.of(question);
        this.askWhom = Optional.of(whom);
        return this;
    }

    /** The entry that mends it, as a JSON pointer. */
    public Finding at(String field) {
        this.field = field;
        return new Finding(
                rule, severity, at, found, required, reference, edition, confidence, remedy, ask, askWhom, this.field);
    }
}
