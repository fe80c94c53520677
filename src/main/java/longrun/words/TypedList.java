package longrun.words;

/** An entered list as a sentence has it. */
public final class TypedList {

    private TypedList() {}

    /** A list of texts without JSON's brackets and quotes: {@code up 4 ft, north 6 ft}; other texts stay as they are. */
    public static String plain(String entered) {
        return entered.startsWith("[\"") && entered.endsWith("\"]")
                ? entered.substring(2, entered.length() - 2).replaceAll("\"\\s*,\\s*\"", ", ")
                : entered;
    }
}
