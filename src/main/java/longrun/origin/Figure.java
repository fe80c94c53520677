package longrun.origin;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import longrun.plan.Fact;

/**
 * A number that knows where it is from. Where one of its inputs is missing the number is unknown, never zero, and the
 * missing entries are named.
 *
 * @param name what the number is, in trade words
 * @param value the number, empty where unknown
 * @param unit its unit
 * @param how table, equation or rule section; or "entered"
 * @param confidence how sure its source is; empty for what a person entered
 * @param from the figures it was made from
 * @param missing the entries it lacks; empty where it is known
 */
public record Figure(
        String name,
        OptionalDouble value,
        String unit,
        String how,
        Optional<Confidence> confidence,
        List<Figure> from,
        List<Missing> missing) {

    public Figure {
        from = List.copyOf(from);
        missing = List.copyOf(missing);
    }

    /** What a person entered, or the entry that is missing. */
    public static <T> Figure entered(
            String name, Fact<T> fact, ToDoubleFunction<? super T> number, String unit, String field, String words) {
        Optional<T> value = fact.findValue();
        if (value.isEmpty()) {
            return unknown(name, unit, List.of(new Missing(field, words)));
        }
        String typed = fact.findText().orElse("");
        return new Figure(
                name,
                OptionalDouble.of(number.applyAsDouble(value.get())),
                unit,
                "entered: " + typed,
                Optional.empty(),
                List.of(),
                List.of());
    }

    /** A published or assumed figure. */
    public static Figure given(String name, double value, String unit, String how, Confidence confidence) {
        return new Figure(name, OptionalDouble.of(value), unit, how, Optional.of(confidence), List.of(), List.of());
    }

    public static Figure unknown(String name, String unit, List<Missing> missing) {
        return new Figure(name, OptionalDouble.empty(), unit, "unknown", Optional.empty(), List.of(), missing);
    }

    /**
     * A figure made from others, in their order; unknown where one of them is, or where they give no number.
     *
     * @param formula of the inputs' numbers
     */
    public static Figure of(
            String name,
            String unit,
            String how,
            Confidence confidence,
            List<Figure> from,
            ToDoubleFunction<double[]> formula) {
        Set<Missing> missing = new LinkedHashSet<>();
        from.forEach(f -> missing.addAll(f.missing()));
        if (from.stream().anyMatch(f -> !f.isKnown())) {
            return new Figure(
                    name, OptionalDouble.empty(), unit, how, Optional.of(confidence), from, List.copyOf(missing));
        }
        double result =
                formula.applyAsDouble(from.stream().mapToDouble(Figure::number).toArray());
        boolean fits = !Double.isNaN(result) && !Double.isInfinite(result);
        return new Figure(
                name,
                fits ? OptionalDouble.of(result + 0.0) : OptionalDouble.empty(),
                unit,
                how,
                Optional.of(confidence),
                from,
                fits ? List.of() : List.of(new Missing("", name + ": the figures entered lie outside " + how)));
    }

    /** The sum of figures of one unit; unknown where one of them is. */
    public static Figure sum(String name, String unit, List<Figure> parts) {
        return of(name, unit, "sum", Confidence.COMPUTED, parts, v -> {
            double sum = 0;
            for (double x : v) {
                sum += x;
            }
            return sum;
        });
    }

    public boolean isKnown() {
        return value.isPresent();
    }

    /**
     * The number.
     *
     * @throws NoSuchElementException where it is unknown
     */
    public double number() {
        return value.orElseThrow(() -> new NoSuchElementException(name + " is unknown"));
    }

    public Figure named(String other) {
        return new Figure(other, value, unit, how, confidence, from, missing);
    }

    /** The number with its unit, grouped in threes; "unknown" where it is not known. */
    public String text() {
        return isKnown() ? text(number(), unit) : "unknown";
    }

    /** A number with its unit as it is printed: whole from 100 up, else to three figures. */
    public static String text(double number, String unit) {
        double size = Math.abs(number);
        String format = size >= 100 || number == Math.rint(number) ? "%,.0f" : size >= 10 ? "%.1f" : "%.3g";
        return String.format(Locale.ROOT, format, number) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** The answer to "where from?". */
    public Origin origin() {
        return new Origin(
                name, text(), how, confidence, from.stream().map(Figure::origin).toList());
    }
}
