package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.piping.Outlet;

/** Writes to everything that is drawn what it is: what stands at the ends first, then the feet, then the sections. */
final class Lettering {

    /** Up to so many sections every label is given a place of its own, however far off. */
    static final int FEW = 60;

    /** A little less than the height of a storey (common practice). */
    private static final double STOREY_FT = 7;

    private final RouteModel model;
    private final DrawingUnits units;
    private final Placing.Placed placed;
    private final Labels labels;
    private Box extent;
    private int seen;

    Lettering(RouteModel model, DrawingUnits units, Placing.Placed placed, Labels labels, Box extent) {
        this.model = model;
        this.units = units;
        this.placed = placed;
        this.labels = labels;
        this.extent = extent;
    }

    void letter() {
        for (int t = 0; t < placed.starts().size(); t++) {
            start(model.trees().get(t), placed.starts().get(t));
        }
        List<Run> runs = model.runs();
        for (Run run : runs) {
            end(run, laid(run));
        }
        for (Run run : runs) {
            Laid laid = laid(run);
            List<Stroke> legs = laid.legs();
            for (int k = 0; k < run.legs().size(); k++) {
                Label.Text feet =
                        Label.Text.quiet(run.id(), List.of(feet(run.legs().get(k))));
                place(
                        LabelPlaces.along(
                                run.id(),
                                feet(run.legs().get(k)),
                                legs.get(k),
                                laid.ways().get(k)),
                        feet,
                        legs.subList(k, k + 1));
            }
        }
        for (Run run : runs) {
            Label.Text words = new Label.Text(run.id(), sectionWords(run));
            List<Stroke> legs = laid(run).legs();
            place(LabelPlaces.led(run.id(), words.lines(), legs, runs.size() > FEW), words, legs);
        }
    }

    private void place(List<Label> near, Label.Text text, List<Stroke> from) {
        if (model.runs().size() > FEW) {
            labels.place(near);
        } else {
            labels.place(near, () -> LeaderPath.find(labels, text, from, extent()));
        }
    }

    private Box extent() {
        for (Label l : labels.placed().subList(seen, labels.placed().size())) {
            extent = extent.with(l.room());
        }
        seen = labels.placed().size();
        return extent;
    }

    private Laid laid(Run run) {
        return Objects.requireNonNull(placed.laid().get(run.index()));
    }

    private void start(RouteModel.Tree tree, Point start) {
        if (tree.atTank()) {
            Box box = TankSymbol.box(start);
            Label.Text words = new Label.Text("", heading(model.tankWords()));
            place(LabelPlaces.under("", words.lines(), box), words, LabelPlaces.edges(box));
        }
        if (tree.regulator() >= 0) {
            regulator(tree.regulator(), start);
        } else {
            Box box = Box.around(start, 8, 8);
            Label.Text words = Label.Text.quiet("", List.of("from where is not said"));
            place(LabelPlaces.beside("", words.lines(), box), words, LabelPlaces.edges(box));
        }
    }

    private String feet(Run.Leg leg) {
        String length = leg.known() ? units.length(leg.feet()) : "length not known";
        return leg.way().isPresent() || !leg.known() ? length : length + ", any way";
    }

    private List<List<Label.Words>> sectionWords(Run run) {
        List<List<Label.Words>> lines = new ArrayList<>();
        boolean sized = Character.isDigit(run.size().charAt(0)) || run.size().startsWith("EHD");
        lines.add(List.of(
                new Label.Words(RunWords.shortened(run.id()), "ti"), new Label.Words(run.size(), sized ? "tb" : "tq")));
        lines.add(List.of(new Label.Words(run.under() + storey(run), "tq")));
        if (run.mustFix()) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        return lines;
    }

    /** Where a section ends a storey or more above or below the start of its pipe, by how much. */
    private String storey(Run run) {
        OptionalDouble height = model.heightFt(run);
        if (!isStorey(height)) {
            return "";
        }
        return ", " + units.length(Math.abs(height.getAsDouble())) + (height.getAsDouble() > 0 ? " up" : " down");
    }

    static boolean isStorey(OptionalDouble heightFt) {
        return heightFt.isPresent() && Math.abs(heightFt.getAsDouble()) >= STOREY_FT;
    }

    private void end(Run run, Laid laid) {
        if (run.end().isEmpty()) {
            return;
        }
        if (run.isAt(Outlet.Kind.REGULATOR)) {
            regulator(run.end().get().item(), laid.end());
            return;
        }
        List<List<Label.Words>> lines = new ArrayList<>();
        boolean appliance = run.isAt(Outlet.Kind.APPLIANCE);
        for (String name : RunWords.lines(run.endName())) {
            lines.add(List.of(new Label.Words(name, appliance ? "ts" : "")));
        }
        lines.addAll(quiet(run.endNotes()));
        if (run.endMustFix() && appliance) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        Box box = appliance ? Layout.applianceBox(run, laid) : Box.around(laid.end(), 6, 6);
        place(LabelPlaces.beside(run.id(), lines, box), new Label.Text(run.id(), lines), LabelPlaces.edges(box));
    }

    private void regulator(int regulator, Point at) {
        List<String> words = model.regulatorWords(regulator);
        List<List<Label.Words>> lines = new ArrayList<>();
        int name = words.size() - 1; // its lines; what it holds stands under them
        words.subList(0, name).forEach(l -> lines.add(List.of(new Label.Words(l, ""))));
        lines.addAll(quiet(words.subList(name, words.size())));
        if (model.regulatorMustFix(regulator)) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        Box box = Box.around(at, 9, 12);
        place(LabelPlaces.beside("", lines, box), new Label.Text("", lines), LabelPlaces.edges(box));
    }

    private static List<List<Label.Words>> heading(List<String> lines) {
        return lines.stream().map(l -> List.of(new Label.Words(l, "ts"))).toList();
    }

    private static List<List<Label.Words>> quiet(List<String> lines) {
        return lines.stream().map(l -> List.of(new Label.Words(l, "tq"))).toList();
    }
}
