package longrun.checked.mutant;

import longrun.plan.choice.Named;

/** The one thing in which a mutant differs from the program. */
public enum Change implements Named {
    BOUNDARY("what is equal falls to the other side"),
    NEGATED("a condition turned round"),
    MATH("one operation of arithmetic for another"),
    CALL("a call left out"),
    ANSWER("another answer: empty, nothing, yes or no"),
    INCREMENT("counted the other way");

    private final String words;

    Change(String words) {
        this.words = words;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }
}
