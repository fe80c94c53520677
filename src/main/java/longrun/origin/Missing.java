package longrun.origin;

/**
 * An entry a figure cannot do without.
 *
 * @param field JSON pointer of the entry
 * @param words what to enter there, in trade words
 */
public record Missing(String field, String words) {

    /** The question for it. */
    public String question() {
        return "Can you find out " + called() + "?";
    }

    /** It as a sentence names it: what is no clause of its own has its article. */
    public String called() {
        return words.matches("(what|which|where|how|the|an?) .*") ? words : "the " + words;
    }
}
