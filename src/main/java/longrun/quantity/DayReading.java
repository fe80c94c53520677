package longrun.quantity;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One of the two days that a date in numbers may mean: {@code 3/4/2026} is March 4 to one and April 3 to another.
 *
 * @param stored as a plan holds it
 * @param words as a person reads it
 */
public record DayReading(String stored, String words) {

    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})(?:[-/.](\\d{4}))?");
    private static final int LEAP_YEAR = 2024; // every day that any year has

    /** Both readings, month first and then day first; empty where there are not two. */
    public static List<DayReading> both(String typed) {
        Matcher m = NUMBERS.matcher(typed.strip());
        if (!m.matches() || (m.group(3) == null && typed.contains("-"))) { // 01-10 has the month first in a plan
            return List.of();
        }
        int first = Integer.parseInt(m.group(1));
        int second = Integer.parseInt(m.group(2));
        Optional<Integer> year = Optional.ofNullable(m.group(3)).map(Integer::valueOf);
        List<DayReading> both = Stream.of(reading(year, first, second), reading(year, second, first))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        return both.size() == 2 ? both : List.of();
    }

    private static Optional<DayReading> reading(Optional<Integer> year, int month, int day) {
        try {
            LocalDate date = LocalDate.of(year.orElse(LEAP_YEAR), month, day);
            String iso = date.toString();
            return Optional.of(
                    year.isPresent()
                            ? new DayReading(iso, Typed.words(date))
                            : new DayReading(iso.substring(5), Typed.dayOfYearWords(iso.substring(5))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
