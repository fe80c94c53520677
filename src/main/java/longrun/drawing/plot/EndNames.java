package longrun.drawing.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Names at the ends of lines, moved apart where they would stand on each other. */
final class EndNames {

    private static final double GAP = 18;

    private record Name(double y, String text, PlotSvg.Ink ink, boolean bold, boolean second) {}

    private final List<Name> names = new ArrayList<>();

    void add(double y, String text, PlotSvg.Ink ink, boolean bold) {
        names.add(new Name(y, text, ink, bold, false));
    }

    /** A second line under the name at the same height. */
    void addBelow(double y, String text, PlotSvg.Ink ink) {
        names.add(new Name(y, text, ink, false, true));
    }

    /** Draws them beside the lines' ends, none below the lowest. */
    void draw(PlotSvg svg, double x, double lowest) {
        List<Name> down = names.stream()
                .sorted(Comparator.comparingDouble(Name::y).thenComparing(Name::second))
                .toList();
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < down.size(); i++) {
            Name name = down.get(i);
            double room = lowest - GAP * (down.size() - 1 - i);
            double at = Math.max(Math.min(name.y(), room), before + GAP);
            svg.words(x, at + 5, "start", name.ink(), name.bold() ? 16 : 14, name.bold(), name.text());
            before = at;
        }
    }
}
