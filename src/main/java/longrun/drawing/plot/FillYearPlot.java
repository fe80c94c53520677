package longrun.drawing.plot;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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
        axes(svg);
        EndNames names = new EndNames();
        limit(svg, names, fullGal, "fill");
        limit(svg, names, refillGal, "refill");
        curve(svg);
        fills(svg);
        range(svg);
        callBy(svg);
        names.draw(svg, RIGHT + 8, BOTTOM);
        return svg.end();
    }

    private double y(double gallons) {
        return BOTTOM - (BOTTOM - TOP) * Math.max(0, Math.min(1, gallons / waterGal));
    }

    private static double x(double day) {
        return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(365, day)) / 365;
    }

    private double x(LocalDate date) {
        return x(ChronoUnit.DAYS.between(year.from(), date));
    }

    private void axes(PlotSvg svg) {
        svg.path(
                new double[] {LEFT, LEFT, RIGHT},
                new double[] {TOP - 6, BOTTOM, BOTTOM},
                PlotSvg.PART,
                PlotSvg.Ink.INK,
                "");
        svg.text(0, 12, "start", PlotSvg.Ink.QUIET, "% full");
        for (int p = 0; p <= 100; p += 20) {
            double y = y(waterGal * p / 100);
            svg.line(LEFT - 5, y, LEFT, y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(LEFT - 9, y + 5, "end", PlotSvg.Ink.QUIET, String.valueOf(p));
        }
        LocalDate end = year.from().plusDays(365);
        for (LocalDate d = year.from().withDayOfMonth(1); d.isBefore(end); d = d.plusMonths(1)) {
            double start = x(d);
            double stop = x(d.plusMonths(1));
            if (!d.isBefore(year.from())) {
                svg.line(start, BOTTOM, start, BOTTOM + 5, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            }
            if (stop - start > 30) {
                svg.text(
                        (start + stop) / 2,
                        BOTTOM + 20,
                        "middle",
                        PlotSvg.Ink.QUIET,
                        LevelPlot.day(d).split(" ")[1]);
            }
        }
    }

    private void limit(PlotSvg svg, EndNames names, double gallons, String name) {
        double y = y(gallons);
        svg.line(LEFT, y, RIGHT, y, PlotSvg.LEADER, PlotSvg.Ink.INK, "");
        names.add(y, name + ", " + Math.round(100 * gallons / waterGal) + " %", PlotSvg.Ink.INK, false);
    }

    private void curve(PlotSvg svg) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int day = 0; day < year.gallons().size(); day++) {
            LocalDate before = year.from().plusDays(day - 1L);
            int at = day;
            // a fill stands straight up at its day's end
            year.deliveries().stream().filter(d -> d.date().equals(before)).forEach(d -> {
                x.add(x(at));
                y.add(y(year.gallons().get(at) - d.gallons()));
            });
            x.add(x(day));
            y.add(y(year.gallons().get(day)));
        }
        svg.path(
                x.stream().mapToDouble(Double::doubleValue).toArray(),
                y.stream().mapToDouble(Double::doubleValue).toArray(),
                PlotSvg.PIPE,
                PlotSvg.Ink.INK,
                "");
        double start = year.gallons().get(0);
        svg.circle(LEFT, y(start), 5, PlotSvg.Ink.ACCENT, true);
        boolean room = year.deliveries().isEmpty() || x(year.deliveries().get(0).date()) > LEFT + 120;
        if (!room) {
            return; // the curve falls through it
        }
        svg.words(
                LEFT + 10,
                y(start) - 6,
                "start",
                PlotSvg.Ink.ACCENT,
                14,
                true,
                Math.round(100 * start / waterGal) + " on " + LevelPlot.day(year.from()));
    }

    private void fills(PlotSvg svg) {
        double top = y(fullGal) - 3;
        List<Double> marks = new ArrayList<>();
        year.deliveries().forEach(d -> marks.add(x(d.date().plusDays(1))));
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
    private void range(PlotSvg svg) {
        days.filter(d -> d.isWide() && d.low() < 365).ifPresent(d -> {
            double y = y(refillGal);
            svg.line(x(d.low()), y, x(d.high()), y, 6, PlotSvg.Ink.INK, "");
            String to = d.high() > 365 ? "later" : LevelPlot.day(year.from().plusDays((long) d.high()));
            boolean late = x(d.high()) > RIGHT - 130;
            svg.words(
                    late ? x(d.low()) - 6 : x(d.high()) + 6,
                    y + 18,
                    late ? "end" : "start",
                    PlotSvg.Ink.QUIET,
                    14,
                    false,
                    LevelPlot.day(year.from().plusDays((long) d.low())) + " to " + to);
        });
    }

    private void callBy(PlotSvg svg) {
        callBy.filter(d -> !d.isBefore(year.from()) && d.isBefore(year.from().plusDays(365)))
                .ifPresent(d -> {
                    double x = x(d);
                    int day = (int) ChronoUnit.DAYS.between(year.from(), d);
                    double y = y(year.gallons().get(day));
                    svg.line(x, y, x, BOTTOM - 20, PlotSvg.PART, PlotSvg.Ink.ACCENT, "");
                    svg.circle(x, y, 3.5, PlotSvg.Ink.ACCENT, false);
                    boolean late = x > RIGHT - 140;
                    svg.words(
                            late ? x - 8 : x + 8,
                            BOTTOM - 16,
                            late ? "end" : "start",
                            PlotSvg.Ink.ACCENT,
                            14,
                            true,
                            "call by " + LevelPlot.day(d));
                });
    }

    private String words() {
        int fills = year.deliveries().size();
        String said = "Level of the tank from " + LevelPlot.day(year.from()) + " on, with "
                + (fills == 0 ? "no fill" : fills == 1 ? "one fill" : fills + " fills") + " in the year";
        return said + callBy.map(d -> "; call by " + LevelPlot.day(d)).orElse("") + ".";
    }
}
