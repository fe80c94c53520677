package longrun.draft.run;

import java.util.List;

/**
 * One line of the run as typed.
 *
 * @param id its letter
 * @param name what it feeds, or where it branches
 * @param from the regulator or line it leaves
 * @param length as stored, with unit
 * @param input Btu/h of what it feeds, as stored, with unit
 * @param pipe what it is made of
 * @param feeds ids of the lines that leave it, and of the line regulator it ends at
 */
public record Line(String id, String name, String from, String length, String input, Pipe pipe, List<String> feeds) {

    public boolean branches() {
        return !feeds.isEmpty();
    }

    boolean isBlank() {
        return name.isBlank() && length.isBlank() && input.isBlank();
    }

    /** What of it is typed in. */
    public enum Column {
        NAME,
        LENGTH,
        INPUT;

        public String written() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
