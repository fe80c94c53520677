package longrun.words;

import longrun.finding.Finding;

/** A finding in whole sentences, in one order on screen and paper: what was found, what is required, what to do. */
public final class FindingWords {

    private FindingWords() {}

    /** What was found and what to do about it. The requirement is shown with its source, on request. */
    public static String told(Finding f) {
        return (Sentence.of(f.found()) + " " + Sentence.of(f.remedy())).strip();
    }

    /** What was found, what is required and what to do. */
    public static String whole(Finding f) {
        return (Sentence.of(f.found()) + " " + required(f) + " " + Sentence.of(f.remedy()))
                .replaceAll(" {2,}", " ")
                .strip();
    }

    /** What is required; empty where the finding names no requirement. */
    public static String required(Finding f) {
        return f.required().isBlank() ? "" : "Required: " + Sentence.of(f.required());
    }
}
