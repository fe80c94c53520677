package longrun.draft.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Months as a person writes them: "Sep to May", "Nov, Dec, Jan", "11-2", "all year". */
public final class MonthsText {

    private static final List<String> NAMES =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final Pattern SPAN = Pattern.compile("(\\S+)\\s*(?:to|through|until|-|\u2013)\\s*(\\S+)");

    private MonthsText() {}

    /** The months as numbers 1 to 12, in order; empty where the text is not understood. */
    public static Optional<List<Integer>> read(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        if (text.matches("(all|whole|the whole) ?(the )?year|always|all( 12)?")) {
            return Optional.of(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12));
        }
        TreeSet<Integer> out = new TreeSet<>();
        for (String part : text.split(",|;|/| and ")) {
            Matcher span = SPAN.matcher(part.strip());
            Optional<Integer> first = month(span.matches() ? span.group(1) : part.strip());
            Optional<Integer> last = span.matches() ? month(span.group(2)) : first;
            if (first.isEmpty() || last.isEmpty()) {
                return Optional.empty();
            }
            for (int m = first.get(); ; m = m % 12 + 1) { // a span may run past the end of the year
                out.add(m);
                if (m == last.get()) {
                    break;
                }
            }
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(new ArrayList<>(out));
    }

    private static Optional<Integer> month(String written) {
        if (written.matches("\\d{1,2}")) {
            return Optional.of(Integer.parseInt(written)).filter(m -> m >= 1 && m <= 12);
        }
        String name = written.replace(".", "");
        for (int m = 0; m < 12; m++) {
            String full = java.time.Month.of(m + 1).name().toLowerCase(Locale.ROOT);
            if (name.length() >= 3 && (full.startsWith(name) || name.equals("sept") && m == 8)) {
                return Optional.of(m + 1);
            }
        }
        return Optional.empty();
    }

    /** The months in words: "Nov to Feb", "Jan, Mar", "all year". */
    public static String written(List<Integer> months) {
        if (months.size() == 12) {
            return "all year";
        }
        int first = months.stream()
                .filter(m -> !months.contains((m + 10) % 12 + 1))
                .findFirst()
                .orElse(1);
        int last = first;
        int count = 1;
        while (months.contains(last % 12 + 1) && count < 12) {
            last = last % 12 + 1;
            count++;
        }
        if (count == months.size() && count > 2) {
            return NAMES.get(first - 1) + " to " + NAMES.get(last - 1);
        }
        return String.join(", ", months.stream().map(m -> NAMES.get(m - 1)).toList());
    }

    /** The short name of a month, January 0. */
    public static String name(int month) {
        return NAMES.get(month);
    }
}
