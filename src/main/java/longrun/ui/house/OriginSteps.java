package longrun.ui.house;

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
        List<List<String>> inputs = origin.inputs().stream()
                .map(i -> List.of(i.figure(), i.value()))
                .toList();
        String held = origin.confidence().map(c -> "; held as " + c.written()).orElse("");
        steps.add(new WhereFrom.Step(origin.figure() + ": " + origin.value(), origin.how() + held + ".", inputs));
        for (Origin input : origin.inputs()) {
            if (input.confidence().isPresent() && !input.inputs().isEmpty()) {
                add(input, steps);
            }
        }
    }
}
