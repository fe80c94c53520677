package longrun.ui.house;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where an entry stands in the draft, and the unit a bare number in it has; written as {@code data-at} on its field, so
 * that what was typed while the program did not answer finds its place.
 *
 * @param unit name of the unit; empty for words
 */
public record EntryAddress(String pointer, String unit) {

    private static final Pattern BARE = Pattern.compile("\\s*-?[0-9.][0-9.,/\\- ]*");

    /** As written on the field. */
    public String written() {
        return unit.isEmpty() ? pointer : pointer + " " + unit;
    }

    static Optional<EntryAddress> of(String written) {
        if (!written.startsWith("/")) {
            return Optional.empty();
        }
        int blank = written.indexOf(' ');
        return Optional.of(
                blank < 0
                        ? new EntryAddress(written, "")
                        : new EntryAddress(written.substring(0, blank), written.substring(blank + 1)));
    }

    /** What the draft holds for what was typed: a bare number gets the unit. */
    public String stored(String typed) {
        return !unit.isEmpty() && BARE.matcher(typed).matches() ? typed.strip() + " " + unit : typed;
    }

    /** What stands in the field for what the draft holds. */
    public String inField(String stored) {
        String end = " " + unit;
        if (!unit.isEmpty() && stored.endsWith(end)) {
            String bare = stored.substring(0, stored.length() - end.length());
            return BARE.matcher(bare).matches() ? bare : stored;
        }
        return stored;
    }
}
