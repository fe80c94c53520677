package longrun.drawing.plot;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.fuel.LevelYear;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.Range;

/**
 * The level of the tank through a year from the gauge's date, in percent of its capacity: fills with their days, the range
 * of days in which the refill gauge may be reached, and the day to call by.
 *
 * @param days from the gauge's date in which the refill gauge may be reached; empty where that is not known
 */
public record FillYearPlot(
        LevelYear year,
        double waterGal,
        double fullGal,
        double refillGal,
        Optional<LocalDate> callBy,
        Optional<Range> days) {

    private static final double WIDTH = 600;
    private static final double LEFT = 36;
    private static final double RIGHT = 500;
    private static final double TOP = 26;
    private static final double BOTTOM = 242;
    /** A fill's day has room beside its mark. */
    private static final double NAME_ROOM = 54;

    /** The plot of a report; empty while the level through the year is not known. */
    public static Optional<FillYearPlot> of(FillReport fill) {
        boolean known = fill.fuel().level().isPresent()
                && fill.tank().waterGal().isKnown()
                && fill.tank().fullGal().isKnown()
                && fill.tank().refillGal().isKnown();
        return known
                ? Optional.of(new FillYearPlot(
                        fill.fuel().level().get(),
                        fill.tank().waterGal().number(),
                        fill.tank().fullGal().number(),
                        fill.tank().refillGal().number(),
                        fill.fuel().callBy(),
                        fill.ranges().flatMap(r -> r.days())))
                : Optional.empty();
    }

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(WIDTH, 270, "Level through the year");
        svg.title(words());
        YearCurve curve = new YearCurve(year, waterGal, LEFT, RIGHT, TOP, BOTTOM);
        curve.axes(svg, 0, 12, "start");
        EndNames names = new EndNames();
        limit(svg, curve, names, fullGal, "fill");
        limit(svg, curve, names, refillGal, "refill");
        curve.draw(svg);
        start(svg, curve);
        fills(svg, curve);
        range(svg, curve);
        curve.callBy(svg, callBy);
        names.draw(svg, RIGHT + 8, BOTTOM);
        return svg.end();
    }

    private void limit(PlotSvg svg, YearCurve curve, EndNames names, double gallons, String name) {
        double y = curve.y(gallons);
        svg.line(LEFT, y, RIGHT, y, PlotSvg.LEADER, PlotSvg.Ink.INK, "");
        names.add(y, name + ", " + Math.round(100 * gallons / waterGal) + " %", PlotSvg.Ink.INK, false);
    }

    /** What the gauge said, where the curve does not fall through the words. */
    private void start(PlotSvg svg, YearCurve curve) {
        double start = year.gallons().get(0);
        boolean room =
                year.deliveries().isEmpty() || curve.x(year.deliveries().get(0).date()) > LEFT + 120;
        if (!room) {
            return;
        }
        svg.words(
                LEFT + 10,
                curve.y(start) - 6,
                "start",
                PlotSvg.Ink.ACCENT,
                14,
                true,
                Math.round(100 * start / waterGal) + " on " + LevelPlot.day(year.from()));
    }

    private void fills(PlotSvg svg, YearCurve curve) {
        double top = curve.y(fullGal) - 3;
        List<Double> marks = new ArrayList<>();
        year.deliveries().forEach(d -> marks.add(curve.x(d.date().plusDays(1))));
        boolean tight = false;
        for (int i = 1; i < marks.size(); i++) {
            tight |= marks.get(i) - marks.get(i - 1) < 12;
        }
        if (tight) {
            svg.text(RIGHT, top - 6, "end", PlotSvg.Ink.QUIET, marks.size() + " fills");
            return;
        }
        double taken = LEFT;
        for (int i = 0; i < marks.size(); i++) {
            double x = marks.get(i);
            svg.shape(new double[] {x - 5, x + 5, x}, new double[] {top - 9, top - 9, top}, PlotSvg.Ink.INK, true);
            double next = i + 1 < marks.size() ? marks.get(i + 1) - 8 : RIGHT;
            boolean right = next - x > NAME_ROOM;
            boolean left = x - 8 - taken > NAME_ROOM;
            if (right || left) {
                svg.words(
                        right ? x + 8 : x - 8,
                        top - 2,
                        right ? "start" : "end",
                        PlotSvg.Ink.INK,
                        14,
                        false,
                        LevelPlot.day(year.deliveries().get(i).date()));
            }
            taken = right ? x + NAME_ROOM : x + 8;
        }
    }

    /** The days in which the refill gauge may be reached, as a bar on its line. */
    private void range(PlotSvg svg, YearCurve curve) {
        days.filter(d -> d.isWide() && d.low() < 365).ifPresent(d -> {
            double y = curve.y(refillGal);
            svg.line(curve.x(d.low()), y, curve.x(d.high()), y, 6, PlotSvg.Ink.INK, "");
            String to = d.high() > 365 ? "later" : LevelPlot.day(year.from().plusDays((long) d.high()));
            boolean late = curve.x(d.high()) > RIGHT - 130;
            svg.words(
                    late ? curve.x(d.low()) - 6 : curve.x(d.high()) + 6,
                    y + 18,
                    late ? "end" : "start",
                    PlotSvg.Ink.QUIET,
                    14,
                    false,
                    LevelPlot.day(year.from().plusDays((long) d.low())) + " to " + to);
        });
    }

    private String words() {
        int fills = year.deliveries().size();
        String said = "Level of the tank from " + LevelPlot.day(year.from()) + " on, with "
                + (fills == 0 ? "no fill" : fills == 1 ? "one fill" : fills + " fills") + " in the year";
        return said + callBy.map(d -> "; call by " + LevelPlot.day(d)).orElse("") + ".";
    }
}
