package longrun.drawing.plot;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.fuel.LevelYear;

/**
 * The level of a tank through the year from the gauge's date, between its edges: scale of percent full, months, the curve
 * with its fills standing straight up, and the day to call by.
 *
 * @param waterGal water capacity of all tanks, gallons
 * @param left first day, in the picture's own units
 * @param right last day
 * @param top all water capacity full
 * @param bottom empty
 */
record YearCurve(LevelYear year, double waterGal, double left, double right, double top, double bottom) {

    double y(double gallons) {
        return bottom - (bottom - top) * Math.max(0, Math.min(1, gallons / waterGal));
    }

    double x(double day) {
        return left + (right - left) * Math.max(0, Math.min(365, day)) / 365;
    }

    double x(LocalDate date) {
        return x(ChronoUnit.DAYS.between(year.from(), date));
    }

    /** Whether a day is one of the year's. */
    private boolean holds(LocalDate date) {
        return !date.isBefore(year.from()) && date.isBefore(year.from().plusDays(365));
    }

    /**
     * Percent up the left edge, months along the bottom.
     *
     * @param headX where the scale's own heading stands
     * @param anchor which end of the heading stands there
     */
    void axes(PlotSvg svg, double headX, double headY, String anchor) {
        svg.path(
                new double[] {left, left, right},
                new double[] {top, bottom, bottom},
                PlotSvg.PART,
                PlotSvg.Ink.INK,
                "");
        svg.text(headX, headY, anchor, PlotSvg.Ink.QUIET, "% full");
        for (int p = 0; p <= 100; p += 20) {
            double y = y(waterGal * p / 100);
            svg.line(left - 5, y, left, y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(left - 10, y + 5, "end", PlotSvg.Ink.QUIET, String.valueOf(p));
        }
        LocalDate end = year.from().plusDays(365);
        for (LocalDate d = year.from().withDayOfMonth(1); d.isBefore(end); d = d.plusMonths(1)) {
            double start = x(d);
            double stop = x(d.plusMonths(1));
            if (!d.isBefore(year.from())) {
                svg.line(start, bottom, start, bottom + 6, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            }
            if (stop - start > 30) {
                svg.text((start + stop) / 2, bottom + 20, "middle", PlotSvg.Ink.QUIET, LevelPlot.month(d.getMonth()));
            }
        }
    }

    /** The level day by day, and where it stands at the gauge's date. */
    void draw(PlotSvg svg) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int day = 0; day < year.gallons().size(); day++) {
            // A fill stands straight up at its day's end.
            LocalDate before = year.from().plusDays(day - 1L);
            int at = day;
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
        svg.circle(x(0), y(year.gallons().get(0)), 4.5, PlotSvg.Ink.ACCENT, true);
    }

    /** The day to call by, where it is one of the year's. */
    void callBy(PlotSvg svg, Optional<LocalDate> callBy) {
        callBy.filter(this::holds).ifPresent(d -> {
            double x = x(d);
            int day = (int) ChronoUnit.DAYS.between(year.from(), d);
            svg.line(x, y(year.gallons().get(day)), x, bottom - 12, PlotSvg.LEADER, PlotSvg.Ink.ACCENT, "");
            boolean late = x > right - 140;
            svg.words(
                    late ? x - 6 : x + 6,
                    bottom - 12,
                    late ? "end" : "start",
                    PlotSvg.Ink.ACCENT,
                    14,
                    true,
                    "call by " + LevelPlot.day(d));
        });
    }
}
