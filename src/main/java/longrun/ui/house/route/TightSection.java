package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.OptionalInt;
import longrun.capacity.CapacityTable;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.plan.SizeNames;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.UnitSystem;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.OriginSteps;

/** Why the section that the plot of the longest run calls tightest is tight: what it carries of what its size may carry. */
final class TightSection {

    private final Element words = Dom.text("span", "", "");
    private final WhereFrom from = new WhereFrom("from-tight");
    private final Element element =
            Dom.el("div", "s tight", Dom.el("p", "q", words, Dom.words(" "), from.ask()), from.list());

    Element element() {
        return element;
    }

    String shown() {
        return element.hasAttribute("hidden") ? "" : words.getText();
    }

    void show(Review review, int stage, UnitSystem units) {
        OptionalInt found = tightest(review, stage);
        Dom.show(element, found.isPresent());
        if (found.isEmpty()) {
            return;
        }
        int section = found.getAsInt();
        SectionSize size = review.sizing().section(section);
        CapacityTable table = size.table().orElseThrow();
        String id = review.piping().section(section).id();
        String load = PressureWords.heat(size.loadBtuh(), units);
        String capacity = PressureWords.heat(size.capacityBtuh(), units);
        String shown = SizeNames.shown(table.material(), size.size().orElseThrow());
        String share = Math.round(100 * size.shareUsed().orElseThrow()) + " %";
        String row = units.row(Length.ofFeet(size.rowFt().orElseThrow())) + " "
                + units.lengthUnit().name();
        Dom.retext(
                words,
                "Section " + id + " is the tightest: it carries " + load + ", and " + shown + " may carry " + capacity
                        + " at the row of " + row + ", so " + share + " of it is used.");
        from.show(OriginSteps.of(Origin.derived(
                "share used of section " + id,
                share,
                "load over the cell of " + table.title() + ", " + table.source() + ", row " + row + ", column " + shown,
                size.confidence().orElse(Confidence.COMPUTED),
                List.of(
                        Origin.derived(
                                "load",
                                load,
                                "sum of the inputs it feeds (2018 International Fuel Gas Code 402.2)",
                                Confidence.PRINT,
                                List.of()),
                        Origin.derived(
                                "capacity",
                                capacity,
                                "the cell",
                                size.confidence().orElse(Confidence.COMPUTED),
                                List.of())))));
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
