package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.drawing.svg.SvgText;
import longrun.plan.choice.Setting;

/** A route laid out and lettered, ready to be written whole or in parts. */
final class Drawn {

    private final RouteModel model;
    private final Placing.Placed placed;
    private final Labels labels = new Labels();
    private final List<Walls.Wall> walls;
    private Box extent = Box.around(new Point(0, 0), 1, 1);

    /** @param apart whether branches of a pipe are drawn further apart than their legs ask for */
    private Drawn(RouteModel model, DrawingUnits units, boolean apart) {
        this.model = model;
        this.placed = new Placing(model, apart).place();
        room();
        this.walls = Walls.of(model, placed);
        for (Walls.Wall wall : walls) {
            wall.edges().forEach(labels::keepOff);
        }
        walls.stream()
                .flatMap(w -> w.names().stream())
                .filter(labels::standsClear)
                .findFirst()
                .ifPresent(n -> labels.place(List.of(n)));
        new Lettering(model, units, placed, labels, extent).letter();
        for (Label l : labels.placed()) {
            extent = extent.with(l.room());
            for (Point p : l.leader()) {
                extent = extent.with(Box.around(p, 1, 1));
            }
        }
    }

    static Drawn of(RouteModel model, DrawingUnits units) {
        Drawn apart = new Drawn(model, units, true);
        boolean few = model.runs().size() <= Lettering.FEW;
        return few && apart.labels.isShutIn() ? new Drawn(model, units, false) : apart;
    }

    boolean isEmpty() {
        return model.trees().isEmpty();
    }

    Box extent() {
        return extent;
    }

    /** Whether nothing drawn or written lies in a box. */
    boolean isFree(Box box) {
        return labels.isFree(box);
    }

    /** Whether a part of the sheet has something in it. */
    boolean shows(Box box) {
        return model.runs().stream().anyMatch(r -> box(r).overlaps(box))
                || labels.placed().stream().anyMatch(l -> box.holds(l.room()));
    }

    /** The words with their places. */
    List<Label> labels() {
        return labels.placed();
    }

    /** Every stroke of pipe, legs and headers. */
    List<Stroke> pipes() {
        List<Stroke> out = new ArrayList<>();
        for (Run run : model.runs()) {
            out.addAll(laid(run).legs());
            if (laid(run).hasHeader()) {
                out.add(new Stroke(laid(run).node(), laid(run).corners().get(0)));
            }
        }
        return out;
    }

    /** The room of every appliance. */
    List<Box> appliances() {
        return model.runs().stream()
                .filter(r -> r.isAt(longrun.piping.Outlet.Kind.APPLIANCE))
                .map(r -> Layout.applianceBox(r, laid(r)))
                .toList();
    }

    /**
     * @param selected the selected section on a page, or empty text for none; absent on paper
     * @param shown which sections, by their room
     * @param whole which words, by theirs
     */
    void write(SvgText out, Optional<String> selected, Predicate<Box> shown, Predicate<Box> whole) {
        SchematicWriter writer = new SchematicWriter(model, placed, selected, out);
        walls.forEach(w -> out.path("ld", w.path()));
        writer.write(run -> shown.test(box(run)));
        writer.write(labels.placed().stream().filter(l -> whole.test(l.room())).toList());
    }

    /** Pipes and appliances without a word. */
    void writeKey(SvgText out) {
        new SchematicWriter(model, placed, Optional.empty(), out).write(run -> true);
    }

    private Laid laid(Run run) {
        return Objects.requireNonNull(placed.laid().get(run.index()));
    }

    private Box box(Run run) {
        Box box = Box.of(laid(run).corners()).with(Box.around(laid(run).node(), 0, 0));
        for (Thing t : Layout.things(run, laid(run))) {
            box = box.with(t.box());
        }
        return box.grown(20);
    }

    private void room() {
        for (Run run : model.runs()) {
            for (Thing t : Layout.things(run, laid(run))) {
                labels.keepOff(t);
                extent = extent.with(t.box());
            }
            Hookup.rooms(run, laid(run))
                    .forEach(b -> labels.keepOff(Thing.of(-1, b, laid(run).end())));
            marks(run, laid(run)).forEach(labels::keepOff);
            if (laid(run).hasHeader()) {
                labels.keepOff(Thing.of(
                        run.index(),
                        new Stroke(laid(run).node(), laid(run).corners().get(0))));
            }
        }
        for (int t = 0; t < placed.starts().size(); t++) {
            Point start = placed.starts().get(t);
            Box box = Box.around(start, 11, 14);
            labels.keepOff(Thing.of(-1, box, start));
            extent = extent.with(box);
            if (model.trees().get(t).atTank()) {
                labels.keepOff(Thing.of(-1, TankSymbol.box(start), start));
                extent = extent.with(TankSymbol.box(start));
            }
        }
    }

    /** Small marks on a pipe that words keep off: gaps of long legs, the ground's surface. */
    private static List<Thing> marks(Run run, Laid laid) {
        List<Thing> out = new ArrayList<>();
        for (int k = 0; k < run.legs().size(); k++) {
            boolean buried = run.setting().filter(s -> s == Setting.UNDERGROUND).isPresent()
                    && !Iso.isLevel(laid.ways().get(k));
            if (run.legs().get(k).feet() > SchematicWriter.LONG_FT || buried) {
                Point m = laid.legs().get(k).a().towards(laid.legs().get(k).b(), 0.5);
                out.add(Thing.of(-1, Box.around(m, 11, 11), m));
            }
        }
        return out;
    }
}
