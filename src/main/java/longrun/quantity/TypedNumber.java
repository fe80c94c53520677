package longrun.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as a tape or a pencil has them, put as a plan writes them: {@code 12 1/2} and 12\u00bd are {@code 12-1/2}. */
final class TypedNumber {

    private static final Map<String, String> FRACTIONS = Map.of(
            "\u00bd", "1/2", "\u00bc", "1/4", "\u00be", "3/4", "\u215b", "1/8", "\u215c", "3/8", "\u215d", "5/8",
            "\u215e", "7/8");
    private static final Pattern SIGN = Pattern.compile("(\\d?)\\s*([\u00bc-\u00be\u215b-\u215e])");
    private static final Pattern MIXED = Pattern.compile("(?<![\\d.,/])(\\d{1,6})\\s+(\\d{1,2}/\\d{1,2})(?![\\d/])");

    private TypedNumber() {}

    static String plain(String typed) {
        Matcher sign = SIGN.matcher(typed);
        String written =
                sign.replaceAll(m -> (m.group(1).isEmpty() ? "" : m.group(1) + "-") + FRACTIONS.get(m.group(2)));
        return MIXED.matcher(written).replaceAll("$1-$2");
    }
}
