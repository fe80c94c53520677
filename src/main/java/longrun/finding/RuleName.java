package longrun.finding;

import java.util.regex.Pattern;

/**
 * The public name of a rule, as a review gives it: {@code shutoff-present}. Each rule defines its name; findings of
 * sizing, pressure, tank and fuel have theirs beside the code that makes them.
 *
 * @param value lower case words joined by hyphens
 */
public record RuleName(String value) {

    private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /** An entry that a result needs is missing. */
    public static final RuleName ENTRY_MISSING = new RuleName("entry-missing");

    /** @throws IllegalArgumentException if it is no such name */
    public RuleName {
        if (!SHAPE.matcher(value).matches()) {
            throw new IllegalArgumentException("not a rule name: " + value);
        }
    }

    @Override
    public String toString() {
        return value;
    }
}
