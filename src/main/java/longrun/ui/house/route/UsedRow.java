package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.TableRow;
import longrun.plan.choice.Material;
import longrun.review.json.SizingOrigins;
import longrun.sizing.SectionSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.lines.RowTable;
import longrun.words.UnitSystem;

/** The row of the table used for the selected line, with its neighbours, its cell framed, and where it is from. */
final class UsedRow {

    private final Element heading = Dom.text("h3", "", "The row used");
    private final Element unit = Dom.text("span", "q light", "");
    private final Element source = Dom.text("p", "q s start-note", "");
    private final RowTable table = new RowTable();
    private final WhereFrom from = new WhereFrom("route-from");
    private final Element element;

    UsedRow() {
        Element head = Dom.el("div", "row-head", heading, unit);
        element = Dom.el("section", "part used-row", head, table.element(), source, from.ask(), from.list());
    }

    Element element() {
        return element;
    }

    void show(Optional<RouteAnswer> answer, UnitSystem units) {
        Optional<RouteAnswer> sized = answer.filter(a -> a.size().row().isPresent()
                && a.size().used().isPresent()
                && a.size().capacity().isPresent());
        Dom.show(element, sized.isPresent());
        if (sized.isEmpty()) {
            return;
        }
        SectionSize size = sized.get().size();
        CapacityTable t = size.table().orElseThrow();
        int row = size.row().orElseThrow();
        int hit = size.used().orElseThrow();
        String id = sized.get().review().piping().section(sized.get().section()).id();
        Dom.retext(heading, "The row used for section " + id);
        Dom.retext(unit, t.material().label() + ", " + units.cellUnit());
        TableRow used = TableRow.of(t, row, hit);
        table.show(
                t.title(),
                t.material() == Material.CSST
                        ? used.headed(t.sizes().stream().map(s -> "EHD " + s).toList())
                        : used,
                units);
        Dom.retext(source, t.title() + ". " + t.source() + ".");
        SizingOrigins origins = new SizingOrigins(sized.get().review());
        List<WhereFrom.Step> steps =
                new ArrayList<>(OriginSteps.of(origins.shareUsed(sized.get().section())));
        sized.get().stage().ifPresent(s -> steps.addAll(OriginSteps.of(origins.longestRun(s))));
        from.show(steps);
    }
}
