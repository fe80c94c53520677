package longrun.drawing.plot;

import java.util.List;
import java.util.OptionalDouble;
import longrun.hotwater.draw.DrawEvent;
import longrun.quantity.Show;

/**
 * A shower minute by minute in one arrangement: temperature at the fixture and after the mixing valve with the limits drawn,
 * below it how hard the on-demand heater fires.
 *
 * @param comfortF least that is comfortable
 * @param fullBtuh the on-demand heater's input; empty where none is at work or it is not known
 */
public record EveningPlot(DrawEvent event, double comfortF, OptionalDouble fullBtuh) {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 366;
    private static final double LEFT = 52;
    private static final double RIGHT = 616;
    private static final double TOP = 30;
    private static final double BOTTOM = 240;
    private static final double FIRE_TOP = 292;
    private static final double FIRE_BOTTOM = 352;
    private static final double LOW_F = 40;
    private static final double HIGH_F = 140;
    private static final double SCALD_F = 120;

    /** The picture. */
    public String svg() {
        PlotSvg svg = new PlotSvg(WIDTH, HEIGHT, "Temperature at the shower");
        svg.title(words());
        axes(svg);
        EndNames names = new EndNames();
        limit(svg, names, SCALD_F, "scald, 120 \u00b0F", PlotSvg.Ink.MUST);
        limit(svg, names, comfortF, "comfort, " + Math.round(comfortF) + " \u00b0F", PlotSvg.Ink.INK);
        curve(svg, event.outletF(), PlotSvg.PART, PlotSvg.Ink.QUIET);
        curve(svg, event.fixtureF(), PlotSvg.PIPE, PlotSvg.Ink.ACCENT);
        double outlet = last(event.outletF());
        double shower = last(event.fixtureF());
        if (Math.abs(outlet - SCALD_F) > 1 && Math.abs(outlet - shower) > 4) {
            names.add(y(outlet), "after the valve", PlotSvg.Ink.QUIET, false);
        }
        names.add(y(shower), "at the shower, " + Math.round(shower) + " \u00b0F", PlotSvg.Ink.ACCENT, true);
        names.draw(svg, RIGHT + 8, BOTTOM);
        fire(svg);
        return svg.end();
    }

    private String words() {
        return "Temperature at the shower over " + Show.plain(event.draw().minutes()) + " minutes, "
                + event.arrangement().label() + ": comfortable for " + Math.round(event.minutesComfortable())
                + " minutes, at last " + Math.round(last(event.fixtureF())) + " \u00b0F.";
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    private void axes(PlotSvg svg) {
        svg.path(
                new double[] {LEFT, LEFT, RIGHT},
                new double[] {TOP, BOTTOM, BOTTOM},
                PlotSvg.PART,
                PlotSvg.Ink.INK,
                "");
        svg.text(10, TOP - 14, "start", PlotSvg.Ink.QUIET, "\u00b0F at the shower");
        for (int f = 40; f <= 140; f += 20) {
            svg.line(LEFT - 5, y(f), LEFT, y(f), PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(LEFT - 10, y(f) + 5, "end", PlotSvg.Ink.QUIET, String.valueOf(f));
        }
        double minutes = event.draw().minutes();
        int step = minutes > 60 ? 20 : minutes > 24 ? 10 : minutes > 10 ? 5 : 1;
        for (int m = 0; m <= minutes + 1e-9; m += step) {
            svg.line(x(m), BOTTOM, x(m), BOTTOM + 5, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(x(m), BOTTOM + 20, "middle", PlotSvg.Ink.QUIET, String.valueOf(m));
        }
        svg.text(RIGHT + 16, BOTTOM + 20, "start", PlotSvg.Ink.QUIET, "minutes");
    }

    private void limit(PlotSvg svg, EndNames names, double degF, String name, PlotSvg.Ink ink) {
        svg.line(LEFT, y(degF), RIGHT, y(degF), PlotSvg.LEADER, ink, "6 4");
        names.add(y(degF), name, ink, false);
    }

    private void curve(PlotSvg svg, List<Double> values, double width, PlotSvg.Ink ink) {
        double[] x = new double[values.size() + 1];
        double[] y = new double[values.size() + 1];
        for (int i = 0; i < values.size(); i++) {
            x[i] = i == 0 ? x(0) : x(Math.min(event.draw().minutes(), i + 0.5));
            y[i] = y(values.get(i));
        }
        x[values.size()] = x(event.draw().minutes());
        y[values.size()] = y(last(values));
        svg.path(x, y, width, ink, "");
    }

    private void fire(PlotSvg svg) {
        svg.text(10, FIRE_TOP - 16, "start", PlotSvg.Ink.QUIET, "on-demand heater fires, Btu/h");
        svg.line(LEFT, FIRE_BOTTOM, RIGHT, FIRE_BOTTOM, PlotSvg.PART, PlotSvg.Ink.INK, "");
        double most = event.inputBtuh().stream().mapToDouble(b -> b).max().orElse(0);
        double full = Math.max(most, fullBtuh.orElse(0));
        if (most <= 0 || full <= 0) {
            svg.text(LEFT + 8, FIRE_BOTTOM - 10, "start", PlotSvg.Ink.QUIET, "does not fire");
            return;
        }
        if (fullBtuh.isPresent()) {
            svg.line(LEFT, FIRE_TOP, RIGHT, FIRE_TOP, PlotSvg.LEADER, PlotSvg.Ink.INK, "6 4");
            svg.text(RIGHT + 8, FIRE_TOP + 5, "start", PlotSvg.Ink.INK, "full, " + Show.whole(Math.rint(full)));
        }
        for (int i = 0; i < event.inputBtuh().size(); i++) {
            double b = event.inputBtuh().get(i);
            if (b > 0) {
                double from = x(i);
                double to = x(Math.min(event.draw().minutes(), i + 1.0));
                double top = FIRE_BOTTOM - (FIRE_BOTTOM - FIRE_TOP) * b / full;
                svg.shape(
                        new double[] {from, from, to, to},
                        new double[] {FIRE_BOTTOM, top, top, FIRE_BOTTOM},
                        PlotSvg.Ink.QUIET,
                        true);
            }
        }
        svg.text(LEFT - 10, FIRE_BOTTOM + 5, "end", PlotSvg.Ink.QUIET, "0");
    }

    private double x(double minute) {
        return LEFT + (RIGHT - LEFT) * minute / event.draw().minutes();
    }

    private static double y(double degF) {
        double f = Math.max(LOW_F, Math.min(HIGH_F, degF));
        return BOTTOM - (BOTTOM - TOP) * (f - LOW_F) / (HIGH_F - LOW_F);
    }
}
