package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.run.Line;
import longrun.draft.run.RunAnswer;
import longrun.ui.frame.Dom;
import longrun.ui.lines.RowTable;
import longrun.words.UnitSystem;

/** The row of the table the selected line was read in, between its neighbours, and what is printed over that table. */
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
        cell.ifPresent(c -> show(c.readIn(), units));
    }

    private void show(RunAnswer.ReadIn in, UnitSystem units) {
        table.show("Capacity, " + units.cellUnit(), in.row(), units);
        Dom.retext(source, in.source() + " " + in.held());
    }
}
