package longrun.draft.sections;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import longrun.plan.choice.Direction;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/**
 * Legs as a fitter writes them in one field: "up 4, north 6, east 10", with commas or only spaces between them. A comma
 * right before a digit belongs to the number, and a decimal comma is then refused. A bare number has the unit of the
 * column. A direction may be its first letter.
 */
public final class LegsText {

    private static final Pattern LEG = Pattern.compile("(?i)\\s*([a-z]+)?\\.?\\s*(.*?)\\s*");
    private static final String WAYS = java.util.Arrays.stream(Direction.values())
            .map(d -> d.written() + "|" + d.written().charAt(0))
            .collect(Collectors.joining("|"));

    /** A semicolon, a comma not in a number, or the space before the next direction. */
    private static final Pattern PARTED = Pattern.compile(
            "(?i)\\s*(?:;|,(?!\\d))\\s*|(?<=[\\d'\"\u2019\u201d.tn])\\s+(?=(?:" + WAYS + ")\\.?\\s*\\d)");

    private static final Map<String, String> SHORT = java.util.Arrays.stream(Direction.values())
            .collect(Collectors.toMap(
                    d -> d.written().substring(0, 1), Direction::written, (a, b) -> a, java.util.TreeMap::new));

    private LegsText() {}

    /** The legs as stored. */
    public static List<String> stored(String typed, UnitSystem units) {
        if (typed.isBlank()) {
            return List.of();
        }
        List<String> legs = new ArrayList<>();
        for (String piece : PARTED.split(typed.strip())) {
            if (!piece.isBlank()) {
                legs.add(leg(piece, units));
            }
        }
        return legs;
    }

    private static String leg(String piece, UnitSystem units) {
        Matcher m = LEG.matcher(piece);
        if (!m.matches()) {
            return piece;
        }
        String word = Optional.ofNullable(m.group(1)).orElse("").toLowerCase(Locale.ROOT);
        String length = Optional.ofNullable(m.group(2)).orElse("");
        String way = SHORT.getOrDefault(word, word);
        String withUnit = Typed.quantity(length, units.lengthUnit().name());
        return way.isEmpty() ? withUnit : (way + " " + withUnit).strip();
    }

    /** The text of the field for what is stored. */
    public static String inField(List<String> stored, UnitSystem units) {
        String end = " " + units.lengthUnit().name();
        return stored.stream()
                .map(s -> s.endsWith(end) ? s.substring(0, s.length() - end.length()) : s)
                .collect(Collectors.joining(", "));
    }

    /** The sum of the legs in feet; empty where one is not understood or there are none. */
    public static OptionalDouble feet(List<String> stored) {
        double sum = 0;
        for (String leg : stored) {
            String length = leg;
            for (Direction d : Direction.values()) {
                if (leg.toLowerCase(Locale.ROOT).startsWith(d.written())) {
                    length = leg.substring(d.written().length());
                }
            }
            try {
                sum += Measure.LENGTH.read(length).feet();
            } catch (NotAQuantity e) {
                return OptionalDouble.empty();
            }
        }
        return stored.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }
}
