package longrun.ui.house.figure;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Origin;
import longrun.ui.frame.WhereFrom;

/** A figure's origin as the steps of a where from. */
public final class OriginSteps {

    private OriginSteps() {}

    /** The figure first, then each figure it came from that has an answer of its own. */
    public static List<WhereFrom.Step> of(Origin origin) {
        List<WhereFrom.Step> steps = new ArrayList<>();
        add(origin, steps);
        return steps;
    }

    private static void add(Origin origin, List<WhereFrom.Step> steps) {
        String value = plain(origin.value());
        String held = origin.confidence().map(c -> "; held as " + c.written()).orElse("");
        List<List<String>> sum = new ArrayList<>();
        String from = "";
        if (origin.inputs().size() == 1) {
            Origin only = origin.inputs().get(0);
            from = "; from " + only.figure() + ": " + plain(only.value());
        } else {
            origin.inputs().forEach(i -> sum.add(List.of(i.figure(), plain(i.value()))));
        }
        if (!sum.isEmpty()) {
            sum.add(List.of(origin.figure(), value));
        }
        steps.add(new WhereFrom.Step(origin.figure() + ": " + value, origin.how() + from + held + ".", sum));
        for (Origin input : origin.inputs()) {
            if (input.confidence().isPresent() && !input.inputs().isEmpty()) {
                add(input, steps);
            }
        }
    }

    /** A list as it was typed, without the marks of its file. */
    private static String plain(String value) {
        return value.startsWith("[\"") && value.endsWith("\"]")
                ? value.substring(2, value.length() - 2).replaceAll("\"\\s*,\\s*\"", ", ")
                : value;
    }
}
