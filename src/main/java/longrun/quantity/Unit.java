package longrun.quantity;

import java.util.List;
import java.util.Locale;

/**
 * A unit a person may write.
 *
 * @param name as shown
 * @param factor canonical units in one of this unit
 * @param offset added to the number before the factor is applied (temperatures only)
 * @param aliases other spellings; case and spacing are free
 */
public record Unit(String name, double factor, double offset, List<String> aliases) {

    public Unit {
        aliases = List.copyOf(aliases);
    }

    static Unit of(String name, double factor, String... aliases) {
        return new Unit(name, factor, 0, List.of(aliases));
    }

    /** The number in canonical units. */
    public double toCanonical(double number) {
        return (number + offset) * factor;
    }

    /** The canonical number in this unit. */
    public double fromCanonical(double canonical) {
        return canonical / factor - offset;
    }

    boolean isWritten(String normalised) {
        return normalise(name).equals(normalised)
                || aliases.stream().anyMatch(a -> normalise(a).equals(normalised));
    }

    /** Case, blanks, dots and brackets carry no meaning in a unit. */
    static String normalise(String written) {
        StringBuilder out = new StringBuilder();
        for (char c : written.toLowerCase(Locale.ROOT).toCharArray()) {
            switch (c) {
                case ' ', '\t', '\u00a0', '\u202f', '.', '\u00b7', '(', ')' -> {}
                case '\u2032', '\u2019' -> out.append('\'');
                case '\u2033', '\u201d' -> out.append('"');
                default -> out.append(c);
            }
        }
        return out.toString();
    }
}
