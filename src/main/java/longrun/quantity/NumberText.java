package longrun.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number grammar: digits with groups of exactly three after commas and one decimal point, or a whole number and a
 * fraction ({@code 1-1/2}, {@code 3/8}). No exponent, no locale: {@code 3,7} is refused, never read as 37.
 */
public final class NumberText {

    private static final Pattern PLAIN = Pattern.compile("\\d+(\\.\\d+)?|\\.\\d+");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(,\\d{3})+(\\.\\d+)?");
    private static final Pattern MIXED = Pattern.compile("(?:(\\d+)-)?(\\d+)/(\\d+)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d+),(\\d+)");
    private static final Pattern SPACED_FRACTION = Pattern.compile("(\\d+)\\s+(\\d+/\\d+)");
    private static final int LONGEST = 40;

    private NumberText() {}

    /**
     * The number a text stands for.
     *
     * @param text without sign and unit
     * @throws NotAQuantity with what to write instead
     */
    public static double read(String text) {
        String t = text.strip();
        if (t.length() > LONGEST) {
            throw new NotAQuantity("a number of " + t.length() + " characters is too long: write it shorter");
        }
        if (PLAIN.matcher(t).matches()) {
            return Double.parseDouble(t);
        }
        if (GROUPED.matcher(t).matches()) {
            return Double.parseDouble(t.replace(",", ""));
        }
        Matcher mixed = MIXED.matcher(t);
        if (mixed.matches()) {
            double below = Double.parseDouble(mixed.group(3));
            if (below == 0) {
                throw new NotAQuantity("\"" + t + "\" divides by zero: write a fraction such as 3/8");
            }
            double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
            return whole + Double.parseDouble(mixed.group(2)) / below;
        }
        throw new NotAQuantity(why(t));
    }

    private static String why(String t) {
        Matcher comma = DECIMAL_COMMA.matcher(t);
        if (comma.matches()) {
            return "\"" + t + "\" has a comma that does not group three digits: write " + comma.group(1) + "."
                    + comma.group(2);
        }
        Matcher spaced = SPACED_FRACTION.matcher(t);
        if (spaced.matches()) {
            return "\"" + t + "\": write a whole number and a fraction as " + spaced.group(1) + "-" + spaced.group(2);
        }
        if (t.isEmpty()) {
            return "there is no number: write digits, such as 12 or 12.5";
        }
        return "\"" + shortened(t) + "\" is not a number: write digits, such as 12, 12.5, 1,250 or 1-1/2";
    }

    static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
    }
}
