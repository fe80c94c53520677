package longrun.words;

/** What a person entered, as a sentence has it. */
public final class TypedList {

    private TypedList() {}

    /** A list as it was entered, without the marks of its file: {@code up 4 ft, north 6 ft}. */
    public static String plain(String entered) {
        return entered.startsWith("[\"") && entered.endsWith("\"]")
                ? entered.substring(2, entered.length() - 2).replaceAll("\"\\s*,\\s*\"", ", ")
                : entered;
    }
}
