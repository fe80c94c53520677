package longrun.quantity;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write in a field, put as a plan writes it. A plan is read strictly, by other programs too; a person at a
 * screen may write {@code 199k}, {@code 11/20/2026} or {@code $2.80}. What cannot be told for certain stays as typed,
 * and whoever reads the plan then says what to write instead.
 */
public final class Typed {

    private static final Pattern BARE = Pattern.compile("\\s*-?[0-9.][0-9.,/\\- ]*");
    private static final Pattern HEAT = Pattern.compile(
            "\\s*([0-9.][0-9.,/\\-]*)\\s*(k?)\\s*(?:btu'?s?\\s*(?:/?\\s*h(?:r|our)?|per\\s+hour)?)?\\.?\\s*",
            Pattern.CASE_INSENSITIVE);

    private static final String ORDINAL = "(?:st|nd|rd|th)?";
    private static final String NAME = "([a-z]{3,9})\\.?";
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4})");
    private static final Pattern NAME_FIRST =
            Pattern.compile(NAME + "\\s*(\\d{1,2})" + ORDINAL + "(?:,?\\s+(\\d{4}))?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})" + ORDINAL + "\\s*" + NAME + "(?:,?\\s+(\\d{4}))?");
    private static final Pattern TWO_NUMBERS = Pattern.compile("(\\d{1,2})/(\\d{1,2})");
    private static final String WANTED = "write a date as 2026-11-20 or Nov 20 2026";

    private static final String DIGITS = "((?:\\d{1,9}|\\d{1,3}(?:,\\d{3}){1,2})(?:\\.\\d{1,9})?|\\.\\d{1,9})";
    private static final Pattern NUMBER = Pattern.compile(DIGITS);
    private static final Pattern DAYS = Pattern.compile("(?<=\\d)\\s*days?\\s*$", Pattern.CASE_INSENSITIVE);
    private static final Pattern PRICE = Pattern.compile(
            "\\$?\\s*" + DIGITS + "\\s*\\$?\\s*(?:(?:/|an?\\s|per\\s)\\s*gal(?:lon)?\\.?)?", Pattern.CASE_INSENSITIVE);

    private Typed() {}

    // Quantities.

    /**
     * A quantity as a plan holds it: a bare number has the unit of its field, and of a heat rate a {@code k} behind the
     * number means thousand Btu/h and {@code Btu} alone means Btu/h.
     *
     * @param unit name of the unit a bare number has
     */
    public static String quantity(String typed, String unit) {
        String plain = TypedNumber.plain(typed);
        if (isBare(plain)) {
            return plain.strip() + " " + unit;
        }
        return isHeatUnit(unit) ? heatRate(plain) : TypedUnit.plain(plain);
    }

    /** What stands in the field for what a plan holds: its own unit is left out. */
    public static String inField(String stored, String unit) {
        String end = " " + unit;
        if (stored.endsWith(end)) {
            String bare = stored.substring(0, stored.length() - end.length());
            return isBare(bare) ? bare : stored;
        }
        return stored;
    }

    private static boolean isBare(String typed) {
        return BARE.matcher(typed).matches();
    }

    private static boolean isHeatUnit(String unit) {
        return Measure.HEAT_RATE.units().stream().anyMatch(u -> u.name().equals(unit));
    }

    private static String heatRate(String typed) {
        try {
            Measure.HEAT_RATE.read(typed);
            return typed;
        } catch (NotAQuantity e) {
            Matcher heat = HEAT.matcher(typed);
            return heat.matches() ? heat.group(1) + (heat.group(2).isEmpty() ? " Btu/h" : " kBtu/h") : typed;
        }
    }

    // Numbers and money.

    /** A bare number, with or without {@code days} behind it, commas between thousands left out; empty where it is none. */
    public static Optional<BigDecimal> number(String typed) {
        return digits(NUMBER, DAYS.matcher(typed).replaceFirst(""));
    }

    /** A price in whatever money it is, with or without a dollar sign and "a gallon"; empty where it is none. */
    public static Optional<BigDecimal> price(String typed) {
        return digits(PRICE, typed);
    }

    private static Optional<BigDecimal> digits(Pattern pattern, String typed) {
        Matcher m = pattern.matcher(typed.strip());
        return m.matches() ? Optional.of(new BigDecimal(m.group(1).replace(",", ""))) : Optional.empty();
    }

    // Dates.

    /** A date as a plan holds it, year first; as typed where it cannot be told. */
    public static String date(String typed) {
        try {
            return readDate(typed).toString();
        } catch (NotAQuantity e) {
            return typed;
        }
    }

    /**
     * The date a person wrote: year first, or month, day, year in numbers or with the month's name.
     *
     * @throws NotAQuantity with what to write instead, also where two numbers may both be the month
     */
    public static LocalDate readDate(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        Matcher m = YEAR_FIRST.matcher(text);
        if (m.matches()) {
            return date(typed, number(m, 1), number(m, 2), number(m, 3));
        }
        m = YEAR_LAST.matcher(text);
        if (m.matches()) {
            return inNumbers(typed, number(m, 1), number(m, 2), number(m, 3));
        }
        m = NAME_FIRST.matcher(text);
        if (m.matches() && m.group(3) != null) {
            return date(typed, number(m, 3), month(typed, m.group(1)), number(m, 2));
        }
        m = DAY_FIRST.matcher(text);
        if (m.matches() && m.group(3) != null) {
            return date(typed, number(m, 3), month(typed, m.group(2)), number(m, 1));
        }
        throw noDate(typed);
    }

    private static LocalDate inNumbers(String typed, int first, int second, int year) {
        if (first > 12) {
            return date(typed, year, second, first);
        }
        LocalDate monthFirst = date(typed, year, first, second);
        if (second > 12 || first == second) {
            return monthFirst;
        }
        LocalDate dayFirst = date(typed, year, second, first);
        throw new NotAQuantity("\"" + shortened(typed) + "\" may be " + spoken(monthFirst) + " or " + spoken(dayFirst)
                + ": write " + monthFirst + " or " + shortName(monthFirst) + ", or else " + dayFirst + " or "
                + shortName(dayFirst));
    }

    private static String spoken(LocalDate d) {
        return name(d.getMonth()) + " " + d.getDayOfMonth();
    }

    private static String shortName(LocalDate d) {
        return name(d.getMonth()).substring(0, 3) + " " + d.getDayOfMonth() + " " + d.getYear();
    }

    /** "November 20, 2026". */
    public static String words(LocalDate d) {
        return spoken(d) + ", " + d.getYear();
    }

    /** A day of every year as a plan holds it, such as 01-31; as typed where it cannot be told. */
    public static String dayOfYear(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        Matcher m = NAME_FIRST.matcher(text);
        if (m.matches() && m.group(3) == null) {
            return monthDay(typed, findMonth(m.group(1)), number(m, 2));
        }
        m = DAY_FIRST.matcher(text);
        if (m.matches() && m.group(3) == null) {
            return monthDay(typed, findMonth(m.group(2)), number(m, 1));
        }
        m = TWO_NUMBERS.matcher(text);
        if (m.matches() && number(m, 2) > 12) {
            return monthDay(typed, number(m, 1), number(m, 2));
        }
        return m.matches() && number(m, 1) > 12 ? monthDay(typed, number(m, 2), number(m, 1)) : typed;
    }

    /** "January 31" for 01-31; empty where it is no such day. */
    public static String dayOfYearWords(String stored) {
        try {
            MonthDay day = MonthDay.parse("--" + stored.strip());
            return name(day.getMonth()) + " " + day.getDayOfMonth();
        } catch (DateTimeException e) {
            return "";
        }
    }

    private static String monthDay(String typed, int month, int day) {
        boolean any =
                month >= 1 && month <= 12 && day >= 1 && day <= Month.of(month).maxLength();
        return any ? String.format(Locale.ROOT, "%02d-%02d", month, day) : typed;
    }

    private static LocalDate date(String typed, int year, int month, int day) {
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException e) {
            throw noDate(typed);
        }
    }

    private static int month(String typed, String name) {
        int found = findMonth(name);
        if (found == 0) {
            throw noDate(typed);
        }
        return found;
    }

    private static int findMonth(String name) {
        for (Month each : Month.values()) {
            if (each.name().toLowerCase(Locale.ROOT).startsWith(name)) {
                return each.getValue();
            }
        }
        return 0;
    }

    private static NotAQuantity noDate(String typed) {
        return new NotAQuantity(
                "\"" + shortened(typed) + "\" is not a date of four-digit year, month and day: " + WANTED);
    }

    private static String name(Month month) {
        String lower = month.name().toLowerCase(Locale.ROOT);
        return lower.substring(0, 1).toUpperCase(Locale.ROOT) + lower.substring(1);
    }

    private static int number(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }

    private static String shortened(String text) {
        return NumberText.shortened(text.strip());
    }
}
