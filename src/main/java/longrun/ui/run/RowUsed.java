package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.run.Line;
import longrun.draft.run.RunAnswer;
import longrun.ui.frame.Dom;
import longrun.ui.frame.RowTable;
import longrun.words.UnitSystem;

/** The row of the table the line in hand was read in, between its neighbours, and what is printed over that table. */
final class RowUsed {

    private static final String NONE = "The row used";

    private final RowTable table = new RowTable();
    private final Element source = Dom.text("p", "q s start-note", "");
    private final Element empty = Dom.text("p", "lede", "The row is shown here as soon as the longest run is known.");
    private Element heading = Dom.text("h2", "", NONE);
    private Element unit = Dom.text("p", "", "");

    Element[] content() {
        return new Element[] {empty, table.element(), source};
    }

    /** The section it stands in, whose heading names the line and whose note names the unit. */
    void headedBy(Element section) {
        heading = section.getChild(0).getChild(0);
        unit = section.getChild(0).getChild(1);
    }

    void show(Optional<Line> line, Optional<RunAnswer.Sized> cell, UnitSystem units) {
        Dom.retext(
                heading,
                line.filter(l -> cell.isPresent())
                        .map(l -> NONE + ", line " + l.id())
                        .orElse(NONE));
        Dom.retext(unit, units.cellUnit());
        Dom.show(empty, cell.isEmpty());
        Dom.show(table.element(), cell.isPresent());
        Dom.show(source, cell.isPresent());
        cell.ifPresent(c -> show(c.row(), units));
    }

    private void show(RunAnswer.TableRow t, UnitSystem units) {
        List<RowTable.Row> rows = t.rows().stream()
                .map(r -> new RowTable.Row(
                        units.row(r.run()),
                        r.used(),
                        r.capacities().stream()
                                .map(c -> c.map(units::cell).orElse("\u2013"))
                                .toList()))
                .toList();
        table.show(
                "Capacity, " + units.cellUnit(),
                "Run, " + units.lengthUnit().name(),
                t.sizes(),
                t.ods(),
                rows,
                t.hitColumn());
        Dom.retext(source, t.source() + " " + t.held());
    }
}
