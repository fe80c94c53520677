package longrun.drawing.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.tank.TankReport;
import longrun.tank.TankReport.CurvePoint;

/**
 * Vapour against the air's temperature: a thick line of what the tank gives while it keeps its pressure, a thin
 * one of the most it gives for a short time, the need drawn across, the thermometer as the
 * axis. Nothing unknown is drawn; the plot says what is missing.
 *
 * @param what the tank in words, for the title
 * @param curve from cold to warm; empty where the tank is not known
 * @param air the temperature marked
 * @param mark what that temperature is, such as "design temperature"
 * @param vapour the most for a short time at that temperature
 * @param planned the figure to plan with, the tank keeping its pressure
 * @param keeps what that pressure is, such as "keeps 20 psig"
 * @param boiling temperature at which gas stops
 * @param need everything firing
 * @param supplier the supplier's own figure, which overrules the lines
 * @param derived whether the figure is derived and not from a rule of the trade
 */
public record VapourPlot(
        String what,
        List<CurvePoint> curve,
        Figure air,
        String mark,
        Figure vapour,
        Figure planned,
        String keeps,
        Figure boiling,
        Figure need,
        OptionalDouble supplier,
        boolean derived) {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 336;
    private static final double NOT_DRAWN_HEIGHT = 80;
    private static final double LEFT = 64;
    private static final double RIGHT = 680;
    private static final double TOP = 28;
    private static final double BOTTOM = 260;
    /** Air at which a tank drawn down to the rule's least pressure gives nothing, degF. */
    private static final double RULE_ZERO = -20;

    public VapourPlot {
        curve = List.copyOf(curve);
    }

    /** The design day's plot, at the refill gauge. */
    public static VapourPlot of(TankReport tank, Figure design, String mark) {
        return new VapourPlot(
                "the tank at its refill gauge",
                tank.curve(),
                design,
                mark,
                tank.capacityAtDesignBtuh(),
                tank.plannedBtuh(),
                "keeps " + tank.keptPsig().text(),
                tank.boilingF(),
                tank.demands().get(0).btuh(),
                tank.supplier() ? tank.capacityAtDesignBtuh().value() : OptionalDouble.empty(),
                tank.derived());
    }

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(
                WIDTH, curve.isEmpty() ? NOT_DRAWN_HEIGHT : HEIGHT, "Vapour against the temperature of the air");
        svg.title(words());
        if (curve.isEmpty()) {
            svg.text(0, 20, "start", PlotSvg.Ink.QUIET, "Not drawn yet.");
            lacking(svg);
            return svg.end();
        }
        double most = Math.max(top(CurvePoint::capacityBtuh), supplier.orElse(0));
        most = Math.max(most, need.value().orElse(0));
        Ladder ladder = Ladder.to(most / 1000);
        Thermometer thermometer = new Thermometer(LEFT, RIGHT, BOTTOM);
        axes(svg, ladder);
        thermometer.scale(svg);
        air.value().ifPresent(f -> {
            thermometer.mercury(svg, f);
            svg.line(thermometer.x(f), TOP, thermometer.x(f), BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        });
        EndNames names = new EndNames();
        notes(svg, thermometer);
        curves(svg, thermometer, ladder, names);
        needLine(svg, ladder, names);
        points(svg, thermometer, ladder);
        names.draw(svg, RIGHT + 8, BOTTOM);
        air.value().ifPresent(f -> thermometer.mark(svg, f, mark));
        lacking(svg);
        return svg.end();
    }

    private static double y(Ladder ladder, double btuh) {
        return BOTTOM - (BOTTOM - TOP) * btuh / 1000 / ladder.top();
    }

    private void axes(PlotSvg svg, Ladder ladder) {
        svg.text(0, 12, "start", PlotSvg.Ink.QUIET, "thousand Btu/h");
        svg.path(
                new double[] {LEFT, LEFT, RIGHT},
                new double[] {TOP, BOTTOM, BOTTOM},
                PlotSvg.PART,
                PlotSvg.Ink.INK,
                "");
        for (double step : ladder.rungs()) {
            double y = y(ladder, step * 1000);
            svg.line(LEFT - 5, y, LEFT, y, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(LEFT - 12, y + 5, "end", PlotSvg.Ink.QUIET, Ladder.written(step));
        }
    }

    private void notes(PlotSvg svg, Thermometer thermometer) {
        if (derived || supplier.isPresent()) {
            return;
        }
        boolean rulesOwnBasis = curve.stream()
                .anyMatch(p -> p.airF() > RULE_ZERO
                        && p.airF() <= RULE_ZERO + 5
                        && p.capacityBtuh().orElse(0) > 0);
        if (!rulesOwnBasis) {
            return;
        }
        double zero = thermometer.x(RULE_ZERO);
        svg.line(zero, TOP + 36, zero, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.words(zero - 6, TOP + 46, "end", PlotSvg.Ink.QUIET, 14, false, "at \u221220 \u00b0F and under, no");
        svg.words(zero - 6, TOP + 64, "end", PlotSvg.Ink.QUIET, 14, false, "10 psi regulator is fed");
        boolean inScale = boiling.isKnown() && boiling.number() >= Thermometer.COLDEST;
        if (inScale) {
            double boils = thermometer.x(boiling.number());
            svg.line(boils, BOTTOM - 38, boils, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            String stops = Thermometer.degrees(Math.rint(boiling.number())) + " \u00b0F: gas stops";
            svg.words(boils + 6, BOTTOM - 26, "start", PlotSvg.Ink.QUIET, 14, false, stops);
        }
    }

    private void curves(PlotSvg svg, Thermometer thermometer, Ladder ladder, EndNames names) {
        line(svg, thermometer, ladder, CurvePoint::capacityBtuh, PlotSvg.PART)
                .ifPresent(y -> names.add(y, derived ? "worked out" : "a short time", PlotSvg.Ink.INK, false));
        if (supplier.isPresent()) {
            double y = y(ladder, supplier.getAsDouble());
            svg.line(LEFT, y, RIGHT, y, PlotSvg.PART, PlotSvg.Ink.INK, "");
            names.add(y, "the supplier\u2019s", PlotSvg.Ink.INK, false);
        } else {
            line(svg, thermometer, ladder, CurvePoint::plannedBtuh, PlotSvg.PIPE)
                    .ifPresent(y -> names.add(y, keeps, PlotSvg.Ink.INK, true));
        }
    }

    /** Draws what is known of one line and gives the height of its end. */
    private Optional<Double> line(
            PlotSvg svg,
            Thermometer thermometer,
            Ladder ladder,
            Function<CurvePoint, OptionalDouble> of,
            double width) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (CurvePoint p : curve) {
            OptionalDouble btuh = of.apply(p);
            if (btuh.isPresent() && p.airF() >= Thermometer.COLDEST && p.airF() <= Thermometer.WARMEST) {
                x.add(thermometer.x(p.airF()));
                y.add(y(ladder, btuh.getAsDouble()));
            }
        }
        if (x.size() < 2) {
            return Optional.empty();
        }
        svg.path(array(x), array(y), width, PlotSvg.Ink.INK, "");
        return Optional.of(y.get(y.size() - 1));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void needLine(PlotSvg svg, Ladder ladder, EndNames names) {
        if (need.isKnown()) {
            double y = y(ladder, need.number());
            svg.line(LEFT, y, RIGHT, y, PlotSvg.PART, PlotSvg.Ink.ACCENT, "");
            names.add(y, "need", PlotSvg.Ink.ACCENT, true);
            names.addBelow(y, whole(need.number()), PlotSvg.Ink.ACCENT);
        }
    }

    private void points(PlotSvg svg, Thermometer thermometer, Ladder ladder) {
        if (!air.isKnown()) {
            return;
        }
        double x = thermometer.x(air.number());
        Figure large = planned.isKnown() ? planned : vapour;
        if (large.isKnown()) {
            double y = y(ladder, large.number());
            svg.circle(x, y, 5, PlotSvg.Ink.INK, true);
            svg.words(x + 12, Math.min(y + 20, BOTTOM - 8), "start", PlotSvg.Ink.INK, 20, true, whole(large.number()));
        }
        boolean more = planned.isKnown() && vapour.isKnown() && planned.number() < vapour.number();
        if (more) {
            double y = y(ladder, vapour.number());
            svg.circle(x, y, 5, PlotSvg.Ink.INK, false);
            svg.words(x - 10, Math.max(y - 10, 26), "end", PlotSvg.Ink.INK, 14, false, whole(vapour.number()));
        }
    }

    private void lacking(PlotSvg svg) {
        List<String> missing = Stream.of(vapour, air, need)
                .flatMap(f -> f.missing().stream())
                .map(Missing::words)
                .distinct()
                .limit(2)
                .toList();
        double y = curve.isEmpty() ? 40 : HEIGHT - 2;
        for (int i = 0; i < missing.size(); i++) {
            svg.text(
                    curve.isEmpty() ? 0 : LEFT,
                    y + 18 * (i - (curve.isEmpty() ? 0 : missing.size() - 1)),
                    "start",
                    PlotSvg.Ink.QUIET,
                    "Missing: " + missing.get(i));
        }
    }

    private String words() {
        if (curve.isEmpty()) {
            return "Vapour is not drawn: an entry is missing.";
        }
        List<String> said = new ArrayList<>();
        String at = air.isKnown() ? "At " + Thermometer.degrees(air.number()) + " \u00b0F " : "";
        if (air.isKnown() && planned.isKnown()) {
            said.add(at + planned.text() + (supplier.isEmpty() ? " (" + keeps + ")" : ""));
        }
        if (air.isKnown() && vapour.isKnown() && supplier.isEmpty()) {
            said.add((planned.isKnown() ? "" : at) + vapour.text() + " at most for a short time");
        }
        said.add(need.isKnown() ? "needed " + need.text() : "the need is not known");
        return "Vapour " + what + " gives, against the temperature of the air. "
                + said.stream().collect(Collectors.joining(", ")) + ".";
    }

    private double top(Function<CurvePoint, OptionalDouble> of) {
        return curve.stream().mapToDouble(p -> of.apply(p).orElse(0)).max().orElse(0);
    }

    private static String whole(double btuh) {
        return String.format(Locale.ROOT, "%,.0f", Math.round(btuh / 1000) * 1000.0);
    }
}
