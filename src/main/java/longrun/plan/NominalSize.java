package longrun.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.quantity.NotAQuantity;
import longrun.quantity.NumberText;

/**
 * The nominal size of a valve or a connector, in inches, and how a person may write it: {@code 1/2}, {@code 1/2"},
 * {@code 1/2 in}, {@code 0.5}. An outside diameter is another way of naming and is kept, but not compared.
 *
 * <p>Source of the sizes: common practice; they are those of gas valves and appliance connectors.
 */
public final class NominalSize {

    private static final List<String> NAMES =
            List.of("1/4", "3/8", "1/2", "5/8", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4");
    private static final Pattern WRITTEN = Pattern.compile(
            "([0-9./\\- ]*?[0-9])\\s*(?:in\\.?|inch|inches|\")?\\s*(nominal|nom\\.?|npt|ips|od|o\\.d\\.)?");
    private static final Map<String, String> WORDS = Map.of(
            "half inch", "1/2",
            "half an inch", "1/2",
            "quarter inch", "1/4",
            "three quarter inch", "3/4",
            "three quarters inch", "3/4",
            "one inch", "1");

    private NominalSize() {}

    /**
     * The size in inches; empty where an outside diameter is written.
     *
     * @throws NotAQuantity with the sizes that can be written
     */
    public static Optional<Double> read(String written) {
        Matcher m = WRITTEN.matcher(plain(written));
        if (m.matches()) {
            Optional<Double> inches = inches(m.group(1));
            boolean outside = m.group(2) != null && m.group(2).startsWith("o");
            if (inches.isPresent() && outside) {
                return Optional.empty();
            }
            if (inches.flatMap(NominalSize::findName).isPresent()) {
                return inches;
            }
        }
        String shown = written.strip();
        throw new NotAQuantity("\"" + (shown.length() <= 40 ? shown : shown.substring(0, 40) + "...")
                + "\" is not a size of a valve or connector: write one of " + String.join(", ", NAMES) + " in.");
    }

    /** What a person typed, put as a size is named; as typed where it is none. */
    public static String typed(String typed) {
        String named = WORDS.getOrDefault(plain(typed).replace('-', ' '), typed);
        try {
            return read(named).flatMap(NominalSize::findName).orElse(typed);
        } catch (NotAQuantity e) {
            return typed;
        }
    }

    private static String plain(String written) {
        return written.strip()
                .toLowerCase(Locale.ROOT)
                .replace("\u00bd", " 1/2")
                .replace("\u00bc", " 1/4")
                .replace("\u00be", " 3/4")
                .replace('\u2033', '"')
                .replace('\u201d', '"')
                .strip();
    }

    private static Optional<Double> inches(String number) {
        try {
            return Optional.of(NumberText.read(number.strip().replaceFirst("^(\\d+) +(\\d+/\\d+)$", "$1-$2")));
        } catch (NotAQuantity e) {
            return Optional.empty();
        }
    }

    private static Optional<String> findName(double inches) {
        return NAMES.stream()
                .filter(n -> Math.abs(NumberText.read(n) - inches) < 1e-9)
                .findFirst();
    }
}
