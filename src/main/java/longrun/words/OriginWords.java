package longrun.words;

import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Pattern;
import longrun.plan.choice.Arrangement;

/** The texts of an origin as people read them: the review keeps the names and units that other programs read. */
public final class OriginWords {

    private static final Pattern DEGREES = Pattern.compile("\\bdeg([FC])\\b");

    /** Each arrangement's written name where it stands by itself. */
    private static final Map<Arrangement, Pattern> ARRANGEMENTS = new EnumMap<>(Arrangement.class);

    static {
        for (Arrangement each : Arrangement.values()) {
            ARRANGEMENTS.put(each, Pattern.compile("(?<=, |^)" + each.written() + "(?=,|;| - |$)"));
        }
    }

    private OriginWords() {}

    /** "105 degF" as 105 °F, an arrangement's written name as it is called, a typed list without JSON's marks. */
    public static String plain(String text) {
        String out = DEGREES.matcher(list(text)).replaceAll("\u00B0$1");
        for (Map.Entry<Arrangement, Pattern> each : ARRANGEMENTS.entrySet()) {
            out = each.getValue().matcher(out).replaceAll(each.getKey().label());
        }
        return out;
    }

    private static String list(String entered) {
        return entered.startsWith("[\"") && entered.endsWith("\"]")
                ? entered.substring(2, entered.length() - 2).replaceAll("\"\\s*,\\s*\"", ", ")
                : entered;
    }
}
