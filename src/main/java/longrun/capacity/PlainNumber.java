package longrun.capacity;

import java.util.regex.Pattern;

/** Numbers as the tables print them: digits and at most one decimal point, nothing else. */
final class PlainNumber {

    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,9})?");

    private PlainNumber() {}

    /** The number, or NaN when the text is none. */
    static double parse(String text) {
        return PLAIN.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    }
}
