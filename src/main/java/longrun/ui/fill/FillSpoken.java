package longrun.ui.fill;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.draft.fill.FillState;
import longrun.drawing.plot.LevelPlot;
import longrun.fuel.fill.FillReport;
import longrun.ui.frame.FootStrip;

/** The answer in short: what is spoken of it, and what stands in the foot of a phone. */
final class FillSpoken {

    private FillSpoken() {}

    /** What is spoken; the browser speaks only what has changed. */
    static Map<String, String> of(FillState state) {
        Map<String, String> facts = new LinkedHashMap<>();
        state.days().ifPresent(d -> facts.put("days", days(d) + " to the refill gauge"));
        String because = state.because().replaceFirst("\\.$", "");
        facts.put(
                "state",
                state.words().substring(0, 1).toLowerCase(Locale.ROOT)
                        + state.words().substring(1)
                        + (state.days().isPresent() ? "" : ", " + because));
        return facts;
    }

    static void foot(FootStrip foot, FillState state, Optional<FillReport> report) {
        foot.show(
                "To refill",
                state.days().map(FillSpoken::days).orElse("not yet"),
                "Call by",
                report.filter(r -> state.days().isPresent())
                        .flatMap(r -> r.fuel().callBy())
                        .map(LevelPlot::day)
                        .orElse("not yet"),
                "Questions",
                String.valueOf(state.questions().size()));
    }

    private static String days(long days) {
        return Math.max(0, days) + (days == 1 ? " day" : " days");
    }
}
