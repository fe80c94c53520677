package longrun.fuel;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import longrun.origin.DataFault;
import longrun.origin.SheetLine;

/**
 * Daily temperatures a person brings, as text of three columns: date, high, low, degF. Every error is named by file, row and
 * column, all at once; with an error there are no days.
 *
 * @param days in the order of the file
 * @param errors empty where the file can be used
 */
public record DailyTemperatures(List<Day> days, List<String> errors) {

    /** One day's high and low, degF. */
    public record Day(LocalDate date, double highF, double lowF) {
        /** Half of high plus low. */
        public double meanF() {
            return (highF + lowF) / 2;
        }
    }

    private static final List<String> HEADINGS = List.of("date", "high", "low");
    private static final double COLDEST = -100;
    private static final double HOTTEST = 150;

    public DailyTemperatures {
        days = List.copyOf(days);
        errors = List.copyOf(errors);
    }

    /**
     * Reads a file.
     *
     * @param name of the file, for the errors
     * @param csv its text; a line of headings may lead
     */
    public static DailyTemperatures read(String name, String csv) {
        List<Day> days = new ArrayList<>();
        List<String> errors = new ArrayList<>();
        Set<LocalDate> seen = new HashSet<>();
        List<SheetLine> lines = List.of();
        try {
            lines = SheetLine.read(name, csv).stream().filter(l -> !l.comment()).toList();
        } catch (DataFault e) {
            errors.add(e.getMessage());
        }
        for (SheetLine line : lines) {
            boolean heading = line == lines.get(0)
                    && line.cells().get(0).toLowerCase(Locale.ROOT).startsWith(HEADINGS.get(0));
            if (!heading) {
                row(name + ":" + line.number() + ":", line.cells(), seen, errors)
                        .ifPresent(days::add);
            }
        }
        if (days.isEmpty() && errors.isEmpty()) {
            errors.add(name + ":1:date: there is no day: write lines such as 2026-01-31,34,18");
        }
        return errors.isEmpty() ? new DailyTemperatures(days, errors) : new DailyTemperatures(List.of(), errors);
    }

    private static Optional<Day> row(String at, List<String> cells, Set<LocalDate> seen, List<String> errors) {
        if (cells.size() != HEADINGS.size()) {
            errors.add(at + "date: " + cells.size() + " cells where date, high and low are wanted");
            return Optional.empty();
        }
        int before = errors.size();
        Optional<LocalDate> date = date(at, cells.get(0), seen, errors);
        OptionalDouble high = temperature(at + "high", cells.get(1), errors);
        OptionalDouble low = temperature(at + "low", cells.get(2), errors);
        if (high.isPresent() && low.isPresent() && high.getAsDouble() < low.getAsDouble()) {
            errors.add(at + "high: the high of " + cells.get(1) + " is below the low of " + cells.get(2)
                    + ": write the high first");
        }
        return errors.size() == before && date.isPresent()
                ? Optional.of(new Day(date.get(), high.orElseThrow(), low.orElseThrow()))
                : Optional.empty();
    }

    private static Optional<LocalDate> date(String at, String text, Set<LocalDate> seen, List<String> errors) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (!seen.add(date)) {
                errors.add(at + "date: " + text + " appears twice: keep one line a day");
            }
            return Optional.of(date);
        } catch (DateTimeParseException e) {
            errors.add(at + "date: \"" + text + "\" is not a date: write year-month-day, such as 2026-01-31");
            return Optional.empty();
        }
    }

    private static OptionalDouble temperature(String at, String text, List<String> errors) {
        if (!text.matches("-?\\d{1,3}(\\.\\d{1,6})?")) {
            errors.add(at + ": \"" + text + "\" is not a temperature: write degF as a number, such as 18 or -3.5");
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(text);
        if (value < COLDEST || value > HOTTEST) {
            errors.add(at + ": " + text + " degF lies outside -100 to 150: look for a slipped digit");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    /** Mean of each month's days, January first; empty where a month has no day. */
    public Optional<List<Double>> monthlyMeans() {
        List<Double> out = new ArrayList<>();
        for (int m = 1; m <= 12; m++) {
            int month = m;
            OptionalDouble mean = days.stream()
                    .filter(d -> d.date().getMonthValue() == month)
                    .mapToDouble(Day::meanF)
                    .average();
            if (mean.isEmpty()) {
                return Optional.empty();
            }
            out.add(mean.getAsDouble());
        }
        return Optional.of(List.copyOf(out));
    }
}
