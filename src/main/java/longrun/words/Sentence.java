package longrun.words;

/** Words made a sentence: a capital at its start, a stop at its end. */
public final class Sentence {

    private Sentence() {}

    public static String of(String words) {
        if (words.isBlank()) {
            return "";
        }
        String stopped = words.endsWith(".") || words.endsWith("?") ? words : words + ".";
        return stopped.substring(0, stopped.offsetByCodePoints(0, 1)).toUpperCase(java.util.Locale.ROOT)
                + stopped.substring(stopped.offsetByCodePoints(0, 1));
    }
}
