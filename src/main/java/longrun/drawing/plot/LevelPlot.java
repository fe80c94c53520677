package longrun.drawing.plot;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.fuel.FuelReport;
import longrun.fuel.LevelYear;
import longrun.fuel.TankLevel;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.tank.TankReport;

/**
 * The tank's level through the year from the gauge's date, in percent of its water capacity, with deliveries, the refill
 * gauge, the weeks no truck can come and the day to call by; the gauge beside it. Where the year is not known the gauge
 * stands alone and the plot says what is missing.
 *
 * @param level the year; empty where it is not known
 * @param waterGal water capacity of all tanks
 * @param fullGal what a delivery fills to
 * @param refillGal left at the refill gauge
 * @param nowGal at the gauge's reading
 * @param gaugeDate the day it was read
 * @param missing what the year lacks, in words
 */
public record LevelPlot(
        Optional<LevelYear> level,
        Figure waterGal,
        Figure fullGal,
        Figure refillGal,
        Figure nowGal,
        Optional<LocalDate> gaugeDate,
        Optional<LocalDate> callBy,
        List<String> missing) {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 300;
    private static final double LEFT = 212;
    private static final double RIGHT = 700;
    private static final double TOP = 44;
    private static final double BOTTOM = 256;
    /** Deliveries are named one by one while their names have room. */
    private static final double NAME_ROOM = 58;

    public LevelPlot {
        missing = List.copyOf(missing);
    }

    /** The plot of a plan's year. */
    public static LevelPlot of(Plan plan, TankReport tank, FuelReport fuel) {
        List<String> missing = new ArrayList<>();
        Stream.of(tank.waterGal(), tank.refillGal(), tank.nowGal(), fuel.annualGal())
                .flatMap(f -> f.missing().stream())
                .forEach(m -> missing.add(m.words()));
        fuel.dateMissing().forEach(m -> missing.add(m.words()));
        return new LevelPlot(
                fuel.level(),
                tank.waterGal(),
                tank.fullGal(),
                tank.refillGal(),
                tank.nowGal(),
                TankLevel.gaugeDate(plan),
                fuel.callBy(),
                missing.stream().distinct().toList());
    }

    /** "9 Jan", the same in every country. */
    public static String day(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date.getMonth());
    }

    private static String month(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.ROOT).substring(0, 3);
    }

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(WIDTH, HEIGHT, "Level of the tank through the year");
        svg.title(words());
        new GaugeDial(84, 140)
                .draw(
                        svg,
                        percent(nowGal),
                        percent(refillGal),
                        gaugeDate.map(d -> "gauge, " + day(d)).orElse("date not entered"));
        if (level.isEmpty() || !waterGal.isKnown()) {
            svg.text(LEFT, TOP + 60, "start", PlotSvg.Ink.INK, "The level through the year is not known yet.");
            for (int i = 0; i < Math.min(4, missing.size()); i++) {
                svg.text(LEFT, TOP + 84 + 20 * i, "start", PlotSvg.Ink.QUIET, "Missing: " + missing.get(i));
            }
            return svg.end();
        }
        draw(svg, level.get());
        return svg.end();
    }

    private double percent(Figure gallons) {
        return gallons.isKnown() && waterGal.isKnown() && waterGal.number() > 0
                ? Math.round(1000 * gallons.number() / waterGal.number()) / 10.0
                : -1;
    }

    private double y(double gallons) {
        return BOTTOM - (BOTTOM - TOP) * Math.max(0, Math.min(1, gallons / waterGal.number()));
    }

    private static double x(double day) {
        return LEFT + (RIGHT - LEFT) * day / 365;
    }

    private static double x(LevelYear year, LocalDate date) {
        return x(Math.max(0, Math.min(365, ChronoUnit.DAYS.between(year.from(), date))));
    }

    private void draw(PlotSvg svg, LevelYear year) {
        axes(svg, year);
        year.noTruck().forEach(gap -> noTruck(svg, year, gap));
        EndNames names = new EndNames();
        limit(svg, names, fullGal, "filled");
        limit(svg, names, refillGal, "refill");
        curve(svg, year);
        deliveries(svg, year);
        callBy(svg, year);
        lowest(svg, year);
        names.draw(svg, RIGHT + 8, BOTTOM);
    }

    private void axes(PlotSvg svg, LevelYear year) {
        svg.path(
                new double[] {LEFT, LEFT, RIGHT},
                new double[] {TOP, BOTTOM, BOTTOM},
                PlotSvg.PART,
                PlotSvg.Ink.INK,
                "");
        svg.text(LEFT - 10, TOP - 12, "end", PlotSvg.Ink.QUIET, "% full");
        for (int p = 0; p <= 100; p += 20) {
            double y = y(waterGal.number() * p / 100);
            svg.line(LEFT - 5, y, LEFT, y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(LEFT - 10, y + 5, "end", PlotSvg.Ink.QUIET, String.valueOf(p));
        }
        LocalDate end = year.from().plusDays(365);
        for (LocalDate d = year.from().withDayOfMonth(1); d.isBefore(end); d = d.plusMonths(1)) {
            double start = x(year, d);
            double stop = x(year, d.plusMonths(1));
            if (!d.isBefore(year.from())) {
                svg.line(start, BOTTOM, start, BOTTOM + 6, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            }
            if (stop - start > 30) {
                svg.text((start + stop) / 2, BOTTOM + 20, "middle", PlotSvg.Ink.QUIET, month(d.getMonth()));
            }
        }
    }

    private void noTruck(PlotSvg svg, LevelYear year, LevelYear.NoTruck gap) {
        double from = x(year, gap.from());
        double to = x(year, gap.to().plusDays(1));
        double wide = to - from;
        for (double down = TOP + 7; down < BOTTOM + wide; down += 7) {
            double first = Math.max(0, down - BOTTOM);
            double last = Math.min(wide, down - TOP);
            if (last > first) {
                svg.line(from + first, down - first, from + last, down - last, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            }
        }
        svg.line(from, TOP, from, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.line(to, TOP, to, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.text(
                Math.max(LEFT + 78, Math.min(RIGHT - 78, (from + to) / 2)),
                TOP - 26,
                "middle",
                PlotSvg.Ink.INK,
                "no truck, " + day(gap.from()) + " to " + day(gap.to()));
    }

    private void limit(PlotSvg svg, EndNames names, Figure gallons, String name) {
        if (gallons.isKnown()) {
            double y = y(gallons.number());
            svg.line(LEFT, y, RIGHT, y, PlotSvg.PART, PlotSvg.Ink.INK, "");
            names.add(y, name + ", " + PlotSvg.number(percent(gallons)) + " %", PlotSvg.Ink.INK, false);
        }
    }

    private void curve(PlotSvg svg, LevelYear year) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int day = 0; day < year.gallons().size(); day++) {
            // A delivery stands straight up at the day's end.
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

    private static void deliveries(PlotSvg svg, LevelYear year) {
        double named = Double.NEGATIVE_INFINITY;
        boolean tight = false;
        for (int i = 1; i < year.deliveries().size(); i++) {
            double room = x(year, year.deliveries().get(i).date())
                    - x(year, year.deliveries().get(i - 1).date());
            tight |= room < 14;
        }
        if (tight) {
            svg.text(RIGHT, TOP - 6, "end", PlotSvg.Ink.QUIET, year.deliveries().size() + " deliveries");
            return;
        }
        for (LevelYear.Drop drop : year.deliveries()) {
            double x = x(year, drop.date().plusDays(1));
            svg.shape(new double[] {x - 5, x + 5, x}, new double[] {TOP, TOP, TOP + 9}, PlotSvg.Ink.INK, true);
            if (x - named >= NAME_ROOM) {
                svg.words(
                        x + 8,
                        TOP + 10,
                        "start",
                        PlotSvg.Ink.QUIET,
                        14,
                        false,
                        String.format(Locale.ROOT, "%,.0f gal", drop.gallons()));
                named = x;
            }
        }
    }

    private void callBy(PlotSvg svg, LevelYear year) {
        Optional<LocalDate> inYear = callBy.filter(
                d -> !d.isBefore(year.from()) && d.isBefore(year.from().plusDays(365)));
        inYear.ifPresent(d -> {
            double x = x(year, d);
            int day = (int) ChronoUnit.DAYS.between(year.from(), d);
            svg.line(x, y(year.gallons().get(day)), x, BOTTOM - 12, PlotSvg.LEADER, PlotSvg.Ink.ACCENT, "");
            boolean late = x > RIGHT - 140;
            svg.words(
                    late ? x - 6 : x + 6,
                    BOTTOM - 12,
                    late ? "end" : "start",
                    PlotSvg.Ink.ACCENT,
                    14,
                    true,
                    "call by " + day(d));
        });
    }

    /** The lowest the tank stands in a spell without truck, where that is under the refill gauge. */
    private void lowest(PlotSvg svg, LevelYear year) {
        year.noTruck().stream()
                .filter(LevelYear.NoTruck::belowRefill)
                .min(Comparator.comparingDouble(LevelYear.NoTruck::endGal))
                .ifPresent(gap -> {
                    double x = x(year, gap.to().plusDays(1));
                    double y = y(gap.endGal());
                    svg.circle(x, y, 4.5, PlotSvg.Ink.INK, false);
                    String share = String.format(Locale.ROOT, "%.0f %%", 100 * gap.endGal() / waterGal.number());
                    svg.words(x + 10, Math.min(y + 14, BOTTOM - 6), "start", PlotSvg.Ink.INK, 16, true, share);
                });
    }

    private String words() {
        if (level.isEmpty()) {
            return "The level of the tank through the year is not drawn: an entry is missing.";
        }
        int drops = level.get().deliveries().size();
        String said =
                "Level of the tank through the year from " + day(level.get().from()) + ", with "
                        + (drops == 0 ? "no delivery" : drops == 1 ? "one delivery" : drops + " deliveries");
        String call = callBy.map(d -> "; call by " + day(d)).orElse("");
        String dry = level.get().dry().map(d -> "; empty on " + day(d)).orElse("");
        return said + call + dry + ".";
    }
}
