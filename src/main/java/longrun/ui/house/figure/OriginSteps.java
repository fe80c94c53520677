package longrun.ui.house.figure;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Origin;
import longrun.ui.frame.WhereFrom;
import longrun.words.OriginWords;

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
        String value = OriginWords.plain(origin.value());
        String held = origin.confidence().map(c -> "; held as " + c.written()).orElse("");
        List<List<String>> sum = new ArrayList<>();
        String from = "";
        if (origin.inputs().size() == 1) {
            Origin only = origin.inputs().get(0);
            from = "; from " + OriginWords.plain(only.figure()) + ": " + OriginWords.plain(only.value());
        } else {
            origin.inputs().forEach(i -> sum.add(List.of(OriginWords.plain(i.figure()), OriginWords.plain(i.value()))));
        }
        if (!sum.isEmpty()) {
            sum.add(List.of(OriginWords.plain(origin.figure()), value));
        }
        steps.add(new WhereFrom.Step(
                OriginWords.plain(origin.figure()) + ": " + value,
                OriginWords.plain(origin.how()) + from + held + ".",
                sum));
        for (Origin input : origin.inputs()) {
            if (input.confidence().isPresent() && !input.inputs().isEmpty()) {
                add(input, steps);
            }
        }
    }
}
