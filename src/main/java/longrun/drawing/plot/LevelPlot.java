package longrun.drawing.plot;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
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

    static String month(Month month) {
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

    private void draw(PlotSvg svg, LevelYear year) {
        YearCurve curve = new YearCurve(year, waterGal.number(), LEFT, RIGHT, TOP, BOTTOM);
        curve.axes(svg, LEFT - 10, TOP - 12, "end");
        year.noTruck().forEach(gap -> noTruck(svg, curve, gap));
        EndNames names = new EndNames();
        limit(svg, curve, names, fullGal, "filled");
        limit(svg, curve, names, refillGal, "refill");
        curve.draw(svg);
        deliveries(svg, curve);
        curve.callBy(svg, callBy);
        lowest(svg, curve);
        names.draw(svg, RIGHT + 8, BOTTOM);
    }

    private void noTruck(PlotSvg svg, YearCurve curve, LevelYear.NoTruck gap) {
        double from = curve.x(gap.from());
        double to = curve.x(gap.to().plusDays(1));
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

    private void limit(PlotSvg svg, YearCurve curve, EndNames names, Figure gallons, String name) {
        if (gallons.isKnown()) {
            double y = curve.y(gallons.number());
            svg.line(LEFT, y, RIGHT, y, PlotSvg.PART, PlotSvg.Ink.INK, "");
            names.add(y, name + ", " + PlotSvg.number(percent(gallons)) + " %", PlotSvg.Ink.INK, false);
        }
    }

    private static void deliveries(PlotSvg svg, YearCurve curve) {
        LevelYear year = curve.year();
        boolean tight = false;
        for (int i = 1; i < year.deliveries().size(); i++) {
            double room = curve.x(year.deliveries().get(i).date())
                    - curve.x(year.deliveries().get(i - 1).date());
            tight |= room < 14;
        }
        if (tight) {
            svg.text(RIGHT, TOP - 6, "end", PlotSvg.Ink.QUIET, year.deliveries().size() + " deliveries");
            return;
        }
        double taken = LEFT;
        for (int i = 0; i < year.deliveries().size(); i++) {
            LevelYear.Drop drop = year.deliveries().get(i);
            double x = curve.x(drop.date().plusDays(1));
            svg.shape(new double[] {x - 5, x + 5, x}, new double[] {TOP, TOP, TOP + 9}, PlotSvg.Ink.INK, true);
            double next = i + 1 < year.deliveries().size()
                    ? curve.x(year.deliveries().get(i + 1).date().plusDays(1)) - 8
                    : RIGHT;
            boolean right = next - x > NAME_ROOM;
            if (right || x - 8 - taken > NAME_ROOM) {
                svg.words(
                        right ? x + 8 : x - 8,
                        TOP + 10,
                        right ? "start" : "end",
                        PlotSvg.Ink.QUIET,
                        14,
                        false,
                        String.format(Locale.ROOT, "%,.0f gal", drop.gallons()));
            }
            taken = right ? x + NAME_ROOM : x + 8;
        }
    }

    /** The lowest the tank stands in a spell without truck, where that is under the refill gauge. */
    private void lowest(PlotSvg svg, YearCurve curve) {
        curve.year().noTruck().stream()
                .filter(LevelYear.NoTruck::belowRefill)
                .min(Comparator.comparingDouble(LevelYear.NoTruck::endGal))
                .ifPresent(gap -> {
                    double x = curve.x(gap.to().plusDays(1));
                    double y = curve.y(gap.endGal());
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
