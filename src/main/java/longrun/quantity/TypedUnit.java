package longrun.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Units as people write them at a job, put as a plan writes them; what is none of these stays as typed. */
final class TypedUnit {

    private static final String NUMBER = "\\s*([0-9.][0-9.,/\\-]*)\\s*";
    private static final Pattern WATER_COLUMN =
            of("(?:\"|\u201d|''|in\\.?|inch(?:es)?)\\s*(?:of\\s+)?w(?:ater)?\\.?\\s*c(?:olumn)?\\.?");
    private static final Pattern CUBIC_FEET = of("(?:cu\\.?|cubic)\\s*(?:ft\\.?|feet|foot)");
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "\\s*(\\d{1,6})\\s*['\u2019\u2032]\\s*(\\d{1,2}(?:-\\d{1,2}/\\d{1,2}|\\.\\d{1,4})?|\\d{1,2}/\\d{1,2})\\s*(?:\"|\u201d|\u2033|'')?\\s*");

    private TypedUnit() {}

    private static Pattern of(String unit) {
        return Pattern.compile(NUMBER + unit + "\\s*", Pattern.CASE_INSENSITIVE);
    }

    static String plain(String typed) {
        Matcher m = FEET_AND_INCHES.matcher(typed);
        if (m.matches()) {
            return m.group(1) + "' " + m.group(2) + "\"";
        }
        m = WATER_COLUMN.matcher(typed);
        if (m.matches()) {
            return m.group(1) + " in w.c.";
        }
        m = CUBIC_FEET.matcher(typed);
        return m.matches() ? m.group(1) + " ft3" : typed;
    }
}
