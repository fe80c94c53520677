package longrun.words;

import longrun.finding.Finding;

/** A finding in whole sentences, in one order on screen and paper: what is, what must be, what to do. */
public final class FindingWords {

    private FindingWords() {}

    /** What is, and what to do about it; what must be stands where one asks where it is from. */
    public static String told(Finding f) {
        return (Sentence.of(f.found()) + " " + Sentence.of(f.remedy())).strip();
    }

    /** What is, what must be and what to do. */
    public static String whole(Finding f) {
        return (Sentence.of(f.found()) + " " + wanted(f) + " " + Sentence.of(f.remedy()))
                .replaceAll(" {2,}", " ")
                .strip();
    }

    /** What must be; empty where nothing is said of it. */
    public static String wanted(Finding f) {
        return f.required().isBlank() ? "" : "Wanted: " + Sentence.of(f.required());
    }
}
