package longrun.origin;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Twelve numbers, January first, that know where they are from; unknown all together.
 *
 * @param values twelve, or none where unknown
 * @param from the figures they were made from
 */
public record Months(
        String name,
        List<Double> values,
        String unit,
        String how,
        Optional<Confidence> confidence,
        List<Figure> from,
        List<Missing> missing) {

    /** Days in each month of the common year that every year is taken as. */
    private static final List<Integer> DAYS = List.of(31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31);

    public Months {
        values = List.copyOf(values);
        from = List.copyOf(from);
        missing = List.copyOf(missing);
        if (!values.isEmpty() && values.size() != 12) {
            throw new IllegalArgumentException("a year has 12 months, not " + values.size());
        }
    }

    public static Months known(
            String name, List<Double> values, String unit, String how, Confidence confidence, List<Figure> from) {
        return new Months(name, values, unit, how, Optional.of(confidence), from, List.of());
    }

    public static Months unknown(String name, String unit, List<Missing> missing) {
        return new Months(name, List.of(), unit, "unknown", Optional.empty(), List.of(), missing);
    }

    public boolean isKnown() {
        return !values.isEmpty();
    }

    /** The number of a month, January 0. Only where known. */
    public double get(int month) {
        return values.get(month);
    }

    /** Days in a month, January 0, of a year of 365 days. */
    public static int days(int month) {
        return DAYS.get(month);
    }

    /** The year's sum as a figure. */
    public Figure sum(String figure) {
        if (!isKnown()) {
            return Figure.unknown(figure, unit, missing);
        }
        double sum = values.stream().mapToDouble(Double::doubleValue).sum();
        return Figure.of(
                figure, unit, "sum of the months; " + how, confidence.orElse(Confidence.COMPUTED), from, v -> sum);
    }

    /** The answer to "where from?". */
    public Origin origin() {
        String text = isKnown()
                ? values.stream()
                                .map(v -> String.format(Locale.ROOT, "%,.1f", v))
                                .collect(Collectors.joining(" "))
                        + " " + unit
                : "unknown";
        return new Origin(
                name, text, how, confidence, from.stream().map(Figure::origin).toList());
    }
}
