package longrun.words;

import java.util.regex.Pattern;
import longrun.plan.choice.Arrangement;

/** The texts of an origin as people read them: the review keeps the names and units that other programs read. */
public final class OriginWords {

    private static final Pattern DEGREES = Pattern.compile("\\bdeg([FC])\\b");

    private OriginWords() {}

    /** "105 degF" as 105 °F, an arrangement's written name as it is called, a typed list without JSON's marks. */
    public static String plain(String text) {
        String out = DEGREES.matcher(list(text)).replaceAll("\u00B0$1");
        for (Arrangement each : Arrangement.values()) {
            out = out.replaceAll("(?<=, |^)" + each.written() + "(?=,|;| - |$)", each.label());
        }
        return out;
    }

    private static String list(String entered) {
        return entered.startsWith("[\"") && entered.endsWith("\"]")
                ? entered.substring(2, entered.length() - 2).replaceAll("\"\\s*,\\s*\"", ", ")
                : entered;
    }
}
