package longrun.words;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Makes a sentence of words: a capital at its start, a full stop at its end, and units as people write them rather than as
 * a plan does ({@code degF}).
 */
public final class Sentence {

    /** Units as a plan writes them, and as people do. */
    private static final Map<Pattern, String> UNITS = Map.of(
            Pattern.compile("(?<=[0-9]) ?degF\\b"), " \u00B0F",
            Pattern.compile("\\bdegF\\b"), "\u00B0F",
            Pattern.compile("(?<=[0-9]) ?degC\\b"), " \u00B0C",
            Pattern.compile("\\bdegC\\b"), "\u00B0C",
            Pattern.compile("(?<=[0-9]) in2\\b"), " sq in.",
            Pattern.compile("\\bin w\\.c\\."), "in. w.c.",
            Pattern.compile("\\bft3\\b"), "cu ft");

    /** Matches thousands without a comma before a unit: "1450 ft" becomes "1,450 ft". */
    private static final Pattern TOGETHER =
            Pattern.compile("(?<![0-9.,/\\-])([0-9]{1,3})([0-9]{3})(?= (?:Btu|kWh|ft|in\\.|gal|lb|psi|cu|sq|\u00B0F))");

    private Sentence() {}

    /** The same words with units as people write them. */
    public static String units(String words) {
        String said = words;
        for (Map.Entry<Pattern, String> each : UNITS.entrySet()) {
            said = each.getKey().matcher(said).replaceAll(each.getValue());
        }
        return TOGETHER.matcher(said).replaceAll("$1,$2");
    }

    /** The words as a sentence; blank stays blank. */
    public static String of(String words) {
        if (words.isBlank()) {
            return "";
        }
        String said = units(words);
        String stopped = said.endsWith(".") || said.endsWith("?") ? said : said + ".";
        return stopped.substring(0, stopped.offsetByCodePoints(0, 1)).toUpperCase(java.util.Locale.ROOT)
                + stopped.substring(stopped.offsetByCodePoints(0, 1));
    }
}
