package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.draft.sections.PressureWords;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.plan.SizeNames;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.OriginSteps;
import longrun.words.UnitSystem;

/**
 * Under the plot of the longest run: how much farther it may go, and why the section called tightest is tight, what it
 * carries of what its size may carry.
 */
final class TightSection {

    private final Element words = Dom.text("span", "", "");
    private final WhereFrom from = new WhereFrom("from-tight");
    private final Element element =
            Dom.el("div", "s tight", Dom.el("p", "q", words, Dom.words(" "), from.ask()), from.list());

    Element element() {
        return element;
    }

    void show(Review review, int stage, UnitSystem units) {
        String room = review.headroom().stageWords(stage);
        String farther = "Room on the longest run: " + room + (room.endsWith(".") ? "" : ".");
        OptionalInt tight = tightest(review, stage);
        Dom.retext(words, tight.isEmpty() ? farther : farther + " " + words(review, tight.getAsInt(), units));
        List<Origin> origins = new ArrayList<>(List.of(feet(review, stage, room, units)));
        tight.ifPresent(s -> origins.add(used(review, s, units)));
        from.show(origins.stream().flatMap(o -> OriginSteps.of(o).stream()).toList());
    }

    private static Origin feet(Review review, int stage, String room, UnitSystem units) {
        return Origin.derived(
                "room on the longest run",
                review.headroom()
                        .lengthOfStage(stage)
                        .map(l -> units.length(l) + " " + units.lengthUnit().name())
                        .orElse("not known"),
                "feet that can be added to its last section before a size of the stage changes: " + room,
                Confidence.COMPUTED,
                List.of());
    }

    private static String words(Review review, int section, UnitSystem units) {
        SectionSize size = review.sizing().section(section);
        return "Section " + review.piping().section(section).id() + " is the tightest of this run: it carries "
                + PressureWords.heat(size.load(), units) + ", and " + shown(size) + " may carry "
                + PressureWords.heat(size.capacity(), units) + " at the row of " + row(size, units) + ", so "
                + share(size) + " of it is used.";
    }

    private static Origin used(Review review, int section, UnitSystem units) {
        SectionSize size = review.sizing().section(section);
        CapacityTable table = size.table().orElseThrow();
        Confidence held = size.confidence().orElse(Confidence.COMPUTED);
        Origin load = Origin.derived(
                "load",
                PressureWords.heat(size.load(), units),
                "sum of the inputs it feeds (2018 International Fuel Gas Code 402.2)",
                Confidence.PRINT,
                List.of());
        Origin capacity =
                Origin.derived("capacity", PressureWords.heat(size.capacity(), units), "the cell", held, List.of());
        return Origin.derived(
                "share used of section " + review.piping().section(section).id(),
                share(size),
                "load over the cell of " + table.title() + ", " + table.source() + ", row " + row(size, units)
                        + ", column " + shown(size),
                held,
                List.of(load, capacity));
    }

    private static String shown(SectionSize size) {
        return SizeNames.shown(
                size.table().orElseThrow().material(), size.size().orElseThrow());
    }

    private static String share(SectionSize size) {
        return Math.round(100 * size.shareUsed().orElseThrow()) + " %";
    }

    private static String row(SectionSize size, UnitSystem units) {
        return units.row(size.rowRun().orElseThrow()) + " " + units.lengthUnit().name();
    }

    /** The section of the longest run with the greatest share used, as the plot draws it. */
    private static OptionalInt tightest(Review review, int stage) {
        int best = -1;
        int at =
                review.sizing().stage(stage).longestRunTo().map(Outlet::section).orElse(-1);
        for (; at >= 0; at = review.piping().parent(at)) {
            double share = review.sizing().section(at).shareUsed().orElse(0);
            double most =
                    best < 0 ? 0 : review.sizing().section(best).shareUsed().orElse(0);
            if (share > 0 && share >= most) {
                best = at; // of equals the one nearer to the regulator, as in the plot
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }
}
