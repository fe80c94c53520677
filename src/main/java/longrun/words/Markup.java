package longrun.words;

/** Text for use in HTML, XML and SVG. */
public final class Markup {

    private static final int REPLACEMENT = 0xFFFD;

    private Markup() {}

    /** A text escaped for content and attributes; a character that XML 1.0 does not allow becomes U+FFFD. */
    public static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 8);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(allowed(c) ? c : REPLACEMENT);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
