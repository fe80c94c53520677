package longrun.paper.calculation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import longrun.origin.Origin;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.review.json.ReviewJson;
import longrun.review.json.ReviewJson.Numbered;
import longrun.words.OriginWords;

/**
 * The numbers of a review as lines of a calculation. The numbers of a list are one line; where several figures share where
 * they are from, each has a line with its own name and number.
 */
final class NumberLines {

    /** How a figure's name in the review ends, and its unit. */
    private static final Map<String, String> UNITS = units();

    private NumberLines() {}

    private static Map<String, String> units() {
        Map<String, String> out = new LinkedHashMap<>(); // the longer ending first
        out.put("Btuh", "Btu/h");
        out.put("InWc", "in. w.c.");
        out.put("FtPerS", "ft/s");
        out.put("Percent", "%");
        out.put("Psi", "psi");
        out.put("Gal", "gal");
        out.put("Gpm", "gal/min");
        out.put("Kwh", "kWh");
        out.put("Ft3", "ft3");
        out.put("Ft", "ft");
        out.put("Lb", "lb");
        out.put("F", "degF");
        return out;
    }

    /** @param at what a figure belongs to, by its pointer */
    static List<CalculationPart.Line> of(Review review, BiFunction<Review, String, String> at) {
        Map<String, Numbered> numbers = ReviewJson.numbers(review);
        Map<String, Set<String>> sharing = new HashMap<>();
        numbers.forEach((pointer, n) -> {
            if (!pointer.startsWith("/tank/curve/")) { // which is a table of its own
                sharing.computeIfAbsent(owner(pointer) + n.origin(), k -> new HashSet<>())
                        .add(list(pointer));
            }
        });
        Map<String, List<Double>> lists = new HashMap<>();
        numbers.forEach((pointer, n) -> {
            if (isItem(pointer)) {
                lists.computeIfAbsent(list(pointer), k -> new ArrayList<>()).add(n.number());
            }
        });
        List<CalculationPart.Line> out = new ArrayList<>();
        Set<String> listed = new HashSet<>();
        numbers.forEach((pointer, n) -> {
            if (pointer.equals("/connectedLoadBtuh") && !review.connectedLoadComplete()) {
                return; // a sum that lacks a term is no figure to go on with
            }
            if (isItem(pointer) && !listed.add(list(pointer))) {
                return;
            }
            boolean shares =
                    sharing.getOrDefault(owner(pointer) + n.origin(), Set.of()).size() > 1;
            out.add(new CalculationPart.Line(
                    pointer,
                    n.arrangement().isEmpty() ? at.apply(review, pointer) : OriginWords.plain(n.arrangement()),
                    shares ? own(pointer, n) : n.origin(),
                    lists.getOrDefault(list(pointer), List.of())));
        });
        return out;
    }

    private static Origin own(String pointer, Numbered n) {
        String field = field(pointer);
        String unit = "";
        String name = field;
        for (Map.Entry<String, String> each : UNITS.entrySet()) {
            if (field.endsWith(each.getKey())) {
                unit = " " + each.getValue();
                name = field.substring(0, field.length() - each.getKey().length());
                break;
            }
        }
        String words =
                name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT).strip();
        Origin o = n.origin();
        return new Origin(o.figure() + ", " + words, rounded(n.number()) + unit, o.how(), o.confidence(), o.inputs());
    }

    /** To the hundredth. */
    static String rounded(double number) {
        return Show.plain(Math.rint(number * 100) / 100);
    }

    private static String field(String pointer) {
        String list = list(pointer).replace("/#", "");
        return list.substring(list.lastIndexOf('/') + 1);
    }

    /** The object a number stands in. */
    private static String owner(String pointer) {
        String list = list(pointer);
        return list.substring(0, list.replace("/#", "").lastIndexOf('/') + 1);
    }

    private static boolean isItem(String pointer) {
        return list(pointer).contains("/#");
    }

    /** A number of a list without its place in it; the points of the tank's curve are one list. */
    private static String list(String pointer) {
        return pointer.startsWith("/tank/curve/") ? "/tank/curve/#" : pointer.replaceFirst("/\\d+$", "/#");
    }
}
