package longrun.draft.run;

import java.util.List;

/**
 * One line of a run, as typed.
 *
 * @param id its letter
 * @param name what it feeds, or where it branches, as typed
 * @param from the id of the regulator or line it leaves
 * @param length its length as stored, with its unit
 * @param input the input of what it feeds, as stored, with its unit
 * @param pipe its material
 * @param feeds the ids of the lines that leave it and of the line regulator at its end
 */
public record Line(String id, String name, String from, String length, String input, Pipe pipe, List<String> feeds) {

    /** Whether other lines or a line regulator leave it. */
    public boolean branches() {
        return !feeds.isEmpty();
    }

    boolean isBlank() {
        return name.isBlank() && length.isBlank() && input.isBlank();
    }

    /** The columns of a line. */
    public enum Column {
        NAME,
        LENGTH,
        INPUT;

        /** Its name within a sentence. */
        public String written() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
