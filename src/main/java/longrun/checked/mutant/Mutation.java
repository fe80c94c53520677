package longrun.checked.mutant;

import longrun.plan.choice.Named;

/** The single change by which a mutant differs from the program. */
public enum Mutation implements Named {
    BOUNDARY("a limit counts an equal value on the other side"),
    NEGATED("a condition is reversed"),
    MATH("one arithmetic operation is replaced by another"),
    CALL("a call is left out"),
    ANSWER("another value is returned: empty, zero, null, true or false"),
    INCREMENT("an increment becomes a decrement");

    private final String words;

    Mutation(String words) {
        this.words = words;
    }

    /** The change, in words. */
    public String words() {
        return words;
    }
}
