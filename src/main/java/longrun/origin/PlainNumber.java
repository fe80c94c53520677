package longrun.origin;

import java.util.regex.Pattern;

/** Numbers as tables print them: digits with at most one decimal point and a minus before them, nothing else. */
public final class PlainNumber {

    private static final Pattern PLAIN = Pattern.compile("-?[0-9]{1,12}(\\.[0-9]{1,9})?");

    private PlainNumber() {}

    /** The number, or NaN when the text is none. */
    public static double parse(String text) {
        return PLAIN.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    }
}
