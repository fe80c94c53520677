package longrun.hotwater.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Use;

/**
 * The draws of a house through a day.
 *
 * @param asEntered each as long as it was entered
 * @param ofTheYear the same shape, lengthened or shortened alike until the day's volume is theirs
 * @param pattern name of the test pattern that stands in where no draw is entered
 * @param unfinished places of draws that lack flow or length: they are in no sum
 */
public record HouseDraws(
        List<Draw> asEntered, List<Draw> ofTheYear, Optional<String> pattern, List<Integer> unfinished) {

    /** A draw whose time is not entered: an evening's showers, common practice. */
    private static final double EVENING_MIN = 19 * 60;

    public HouseDraws {
        asEntered = List.copyOf(asEntered);
        ofTheYear = List.copyOf(ofTheYear);
        unfinished = List.copyOf(unfinished);
    }

    /**
     * Of an entry.
     *
     * @param gallons a day at the fixtures
     * @param useF temperature of use where a draw names none
     */
    public static HouseDraws of(Use.HotWater entry, double gallons, double useF) {
        List<Draw> out = new ArrayList<>();
        List<Integer> unfinished = new ArrayList<>();
        for (int i = 0; i < entry.draws().size(); i++) {
            Use.Draw d = entry.draws().get(i);
            double flow = d.flow().findValue().map(f -> f.gpm()).orElse(0.0);
            double lasts = d.lasts().findValue().map(t -> t.minutes()).orElse(0.0);
            if (flow > 0 && lasts > 0) {
                double start = d.start()
                        .findValue()
                        .map(t -> t.getHour() * 60 + t.getMinute() + t.getSecond() / 60.0)
                        .orElse(EVENING_MIN);
                double use = d.useTemp().findValue().map(t -> t.degF()).orElse(useF);
                out.add(new Draw(d.name().findValue().orElse("draw " + (i + 1)), start, lasts, flow, use).scaled(1));
            } else {
                unfinished.add(i);
            }
        }
        Optional<String> pattern = out.isEmpty() ? Optional.of(DrawPatterns.nearest(gallons)) : Optional.empty();
        List<Draw> shape = pattern.map(p -> DrawPatterns.draws(p, useF)).orElse(out);
        double sum = shape.stream().mapToDouble(Draw::gallons).sum();
        List<Draw> year =
                gallons > 0 ? shape.stream().map(d -> d.scaled(gallons / sum)).toList() : List.of();
        return new HouseDraws(pattern.isPresent() ? year : out, year, pattern, unfinished);
    }
}
