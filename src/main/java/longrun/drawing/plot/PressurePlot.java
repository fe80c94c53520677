package longrun.drawing.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.pressure.Pressures;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;

/**
 * Pressure along a stage's longest run with everything firing, from the setting and from the setting less droop down to
 * what is left past the connector, against the least the run may end with and the label's least. Psi from 1.5 psi at the regulator, in. w.c. under it.
 */
public final class PressurePlot {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 320;
    private static final double LEFT = 64;
    private static final double RIGHT = 590;
    private static final double TOP = 40;
    private static final double BOTTOM = 264;
    private static final double LABEL_GAP = 18;

    /** A level to hold the lines against, or a line's end, with its name. */
    private record Level(double inWc, String name, boolean limit) {}

    private final Pressures pressures;
    private final Sizing sizing;
    private final Piping piping;
    private final Stage stage;
    private final List<Integer> run = new ArrayList<>();
    private final boolean psi;
    private final Optional<Outlet> last;
    private double least;
    private double greatest;
    private double feet;

    private PressurePlot(Pressures pressures, int stage) {
        this.pressures = pressures;
        this.sizing = pressures.sizing();
        this.piping = sizing.piping();
        this.stage = piping.stages().get(stage);
        this.psi = this.stage.regulator().outlet().is(p -> p.psi() >= 1.5);
        this.last = sizing.stage(stage).longestRunTo();
        for (int s = last.map(Outlet::section).orElse(-1); s >= 0; s = piping.parent(s)) {
            run.add(0, s);
        }
    }

    /** The plot of one stage, by its index in {@link Piping#stages()}. */
    public static String svg(Pressures pressures, int stage) {
        return new PressurePlot(pressures, stage).draw(stage);
    }

    private String draw(int index) {
        String title = "Pressure along the longest run from " + stage.id()
                + sizing.stage(index).longestRunTo().map(o -> " to " + o.id()).orElse("");
        PlotSvg svg = new PlotSvg(WIDTH, HEIGHT, title);
        svg.title(title);
        svg.text(LEFT, 20, "start", PlotSvg.Ink.INK, title);
        boolean known = !run.isEmpty()
                && run.stream().allMatch(s -> pressures.section(s).end().isPresent());
        if (!known) {
            svg.text(LEFT, HEIGHT / 2, "start", PlotSvg.Ink.QUIET, "Not known: an entry of this run is missing.");
            return svg.end();
        }
        double setting = pressures.regulator(index).setting().orElseThrow().inWc();
        double[] ends = run.stream()
                .mapToDouble(s -> pressures.section(s).end().orElseThrow().inWc())
                .toArray();
        Optional<Pressure> droop =
                pressures.regulator(index).droop().orElseThrow().atLoad();
        List<Level> levels = levels(setting, ends[ends.length - 1]);
        scale(setting, levels);
        axes(svg, setting);
        limits(svg, levels);
        if (droop.isPresent()) {
            double[] drooped = run.stream()
                    .mapToDouble(
                            s -> pressures.section(s).endDrooped().orElseThrow().inWc())
                    .toArray();
            curve(svg, Math.max(0, setting - droop.get().inWc()), drooped, PlotSvg.PART, PlotSvg.Ink.INK, "6 4");
        }
        curve(svg, setting, ends, PlotSvg.PIPE, PlotSvg.Ink.INK, "");
        inlet().ifPresent(end -> {
            double fallen = pressures
                    .section(run.get(run.size() - 1))
                    .endDrooped()
                    .map(Pressure::inWc)
                    .orElse(end);
            svg.line(RIGHT, y(fallen), RIGHT, y(end), PlotSvg.PART, PlotSvg.Ink.INK, "");
            svg.circle(RIGHT, y(end), 3, PlotSvg.Ink.INK, true);
        });
        names(svg, levels);
        tight(svg, setting, ends);
        return svg.end();
    }

    private List<Level> levels(double setting, double end) {
        List<Level> out = new ArrayList<>();
        out.add(new Level(end, "set, all firing " + shown(end), false));
        pressures
                .section(run.get(run.size() - 1))
                .endDrooped()
                .map(Pressure::inWc)
                .ifPresent(d -> out.add(new Level(d, "regulator fallen " + shown(d), false)));
        inlet().ifPresent(p -> out.add(new Level(p, "left at its inlet " + shown(p), false)));
        Optional<Pressure> drop = stage.regulator().allowedDrop().findValue();
        drop.ifPresent(d -> out.add(new Level(setting - d.inWc(), "allowed drop, " + shown(setting - d.inWc()), true)));
        if (last.isPresent() && last.get().kind() == Outlet.Kind.APPLIANCE) {
            Appliance appliance = piping.plan().appliances().get(last.get().item());
            appliance
                    .minInlet()
                    .findValue()
                    .ifPresent(p -> out.add(new Level(p.inWc(), "label's least " + shown(p.inWc()), true)));
        }
        return out;
    }

    /** What is left at the appliance the run ends at, past its connector. */
    private Optional<Double> inlet() {
        return last.filter(o -> o.kind() == Outlet.Kind.APPLIANCE)
                .flatMap(o -> pressures.outlet(o.item()).pressureAtInlet())
                .map(Pressure::inWc);
    }

    private void scale(double setting, List<Level> levels) {
        least = levels.stream().mapToDouble(Level::inWc).min().orElse(0);
        greatest =
                Math.max(setting, levels.stream().mapToDouble(Level::inWc).max().orElse(setting));
        double margin = Math.max(0.05 * (greatest - least), 0.01);
        least = Math.max(0, least - margin);
        greatest += margin;
        feet = run.stream()
                .mapToDouble(s -> piping.measured(s).orElseThrow().feet())
                .sum();
    }

    private double x(double atFt) {
        return feet > 0 ? LEFT + (RIGHT - LEFT) * atFt / feet : LEFT;
    }

    private double y(double inWc) {
        return BOTTOM - (BOTTOM - TOP) * (inWc - least) / (greatest - least);
    }

    private void axes(PlotSvg svg, double setting) {
        svg.line(LEFT, TOP, LEFT, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        svg.text(LEFT - 8, y(setting) + 5, "end", PlotSvg.Ink.INK, bare(setting));
        svg.text(LEFT - 8, y(least) + 5, "end", PlotSvg.Ink.QUIET, bare(least));
        svg.text(LEFT - 8, TOP - 14, "end", PlotSvg.Ink.QUIET, psi ? "psi" : "in. w.c.");
        svg.text(LEFT, BOTTOM + 20, "middle", PlotSvg.Ink.QUIET, "0");
        svg.text(RIGHT, BOTTOM + 20, "middle", PlotSvg.Ink.QUIET, PlotSvg.number(feet) + " ft");
    }

    private void limits(PlotSvg svg, List<Level> levels) {
        for (Level level : levels) {
            if (level.limit()) {
                svg.line(LEFT, y(level.inWc()), RIGHT, y(level.inWc()), PlotSvg.PART, PlotSvg.Ink.QUIET, "2 3");
            }
        }
    }

    /** Names at the line's end, moved apart where they would stand on each other, with a leader to each. */
    private void names(PlotSvg svg, List<Level> levels) {
        List<Level> downwards = levels.stream()
                .sorted(java.util.Comparator.comparingDouble(Level::inWc).reversed())
                .toList();
        double before = TOP - LABEL_GAP;
        double lowest = BOTTOM + LABEL_GAP;
        for (int i = 0; i < downwards.size(); i++) {
            Level level = downwards.get(i);
            double room = lowest - LABEL_GAP * (downwards.size() - 1 - i);
            double at = Math.min(room, Math.max(y(level.inWc()), before + LABEL_GAP));
            svg.line(RIGHT + 2, y(level.inWc()), RIGHT + 14, at, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
            svg.text(RIGHT + 18, at + 5, "start", level.limit() ? PlotSvg.Ink.QUIET : PlotSvg.Ink.INK, level.name());
            before = at;
        }
    }

    private void curve(PlotSvg svg, double start, double[] ends, double width, PlotSvg.Ink ink, String dash) {
        double[] x = new double[ends.length + 1];
        double[] y = new double[ends.length + 1];
        x[0] = x(0);
        y[0] = y(start);
        double at = 0;
        for (int i = 0; i < ends.length; i++) {
            at += piping.measured(run.get(i)).orElseThrow().feet();
            x[i + 1] = x(at);
            y[i + 1] = Math.min(BOTTOM, y(ends[i]));
        }
        svg.path(x, y, width, ink, dash);
    }

    /** The section that uses most of its capacity, drawn again in the accent and named. */
    private void tight(PlotSvg svg, double setting, double[] ends) {
        int tight = 0;
        for (int i = 1; i < run.size(); i++) {
            if (share(i) > share(tight)) {
                tight = i;
            }
        }
        if (share(tight) <= 0) {
            return;
        }
        double from = 0;
        for (int i = 0; i < tight; i++) {
            from += piping.measured(run.get(i)).orElseThrow().feet();
        }
        double to = from + piping.measured(run.get(tight)).orElseThrow().feet();
        double start = tight == 0 ? setting : ends[tight - 1];
        double middle = (x(from) + x(to)) / 2;
        double height = (y(start) + y(ends[tight])) / 2;
        svg.line(x(from), y(start), x(to), y(ends[tight]), PlotSvg.PIPE, PlotSvg.Ink.ACCENT, "");
        double foot = BOTTOM + 36;
        svg.line(middle, height + 4, middle, foot - 14, PlotSvg.LEADER, PlotSvg.Ink.ACCENT, "");
        svg.text(
                Math.max(LEFT + 90, Math.min(RIGHT - 90, middle)),
                foot,
                "middle",
                PlotSvg.Ink.ACCENT,
                "tightest: section " + piping.section(run.get(tight)).id() + ", "
                        + String.format(Locale.ROOT, "%.0f", 100 * share(tight)) + " % used");
    }

    private double share(int i) {
        return sizing.section(run.get(i)).shareUsed().orElse(0);
    }

    private String bare(double inWc) {
        return String.format(Locale.ROOT, "%.2f", psi ? Pressure.ofInWc(inWc).psi() : inWc);
    }

    private String shown(double inWc) {
        return bare(inWc) + (psi ? " psi" : " in.");
    }
}
