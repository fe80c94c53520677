package longrun.checked.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.checked.table.DifferingCell;
import longrun.checked.table.EquationCheck;
import longrun.checked.table.SecondReading;
import longrun.quantity.HeatRate;
import longrun.quantity.Show;

/** The parts of the report that compare capacity tables with the equation and with a second keying. */
final class TableParts {

    private TableParts() {}

    static Part equation() {
        List<List<Cell>> rows = new ArrayList<>();
        List<List<Cell>> differing = new ArrayList<>();
        for (EquationCheck c : EquationCheck.listAll()) {
            rows.add(List.of(
                    name(c.table()),
                    Cell.of(c.printed()),
                    Cell.of(c.printedSame()),
                    Cell.of(c.computed()),
                    Cell.of(c.differing().size())));
            c.differing().forEach(cell -> differing.add(cell(c.table(), cell, "equation")));
        }
        return new Part(
                "equation",
                "Capacity tables against the code's equation",
                List.of(
                        "The equation in flow form, rounded as the code prints it (2018 International Fuel Gas Code, 402.4 and"
                                + " Appendix A.4), with 2,488 Btu a cubic foot. A figure that was made by that equation, because no"
                                + " print of its row was available, proves nothing and is counted separately.",
                        "Corrugated tubing has no bore, so its tables cannot be compared with an equation: see the second keying."),
                List.of(
                        new ReportTable(
                                "Table by table",
                                rows.size() + " tables",
                                List.of(
                                        "Table",
                                        "Read in print",
                                        "Same as the equation",
                                        "Made by the equation",
                                        "Differ"),
                                rows),
                        new ReportTable(
                                "Every figure that differs",
                                differing.size() + " figures, each with its reason",
                                List.of("Table", "Where", "Table, Btu/h", "Equation, Btu/h", "Why"),
                                differing)));
    }

    static Part second() {
        List<List<Cell>> rows = new ArrayList<>();
        List<List<Cell>> differing = new ArrayList<>();
        for (SecondReading s : SecondReading.listAll()) {
            rows.add(List.of(
                    Cell.of(s.table().title(), s.source()),
                    Cell.of(s.cells()),
                    Cell.of(s.cells() - s.differing().size()),
                    Cell.of(s.differing().size())));
            s.differing().forEach(cell -> differing.add(cell(s.table(), cell, "second reading")));
        }
        List<ReportTable> tables = new ArrayList<>();
        tables.add(new ReportTable(
                "Table by table", rows.size() + " tables", List.of("Table", "Keyed twice", "Same", "Differ"), rows));
        if (!differing.isEmpty()) {
            tables.add(new ReportTable(
                    "Every figure that differs",
                    differing.size() == 1
                            ? "one figure, with its reason"
                            : differing.size() + " figures, each with its reason",
                    List.of("Table", "Where", "Table, Btu/h", "Second reading, Btu/h", "Why"),
                    differing));
        }
        String once = String.join(
                "; ",
                SecondReading.listKeyedOnce().stream().map(CapacityTable::title).toList());
        return new Part(
                "keyed-twice",
                "Tables keyed a second time",
                List.of(
                        "The rows of each page that could be read again were keyed a second time, without looking at the first"
                                + " keying, and both are compared figure by figure.",
                        "Keyed once: " + once
                                + ". The corrected steel table is compared with its print through the table as printed."),
                tables);
    }

    private static Cell name(CapacityTable table) {
        return Cell.of(table.title(), table.source());
    }

    private static List<Cell> cell(CapacityTable table, DifferingCell c, String other) {
        return List.of(
                Cell.of(table.title()),
                Cell.of(Show.rowFeet(c.run()) + ", " + c.size() + " in."),
                Cell.of(btuh(c.table())),
                Cell.of(
                        btuh(c.other()),
                        c.percentOver().isPresent()
                                ? "the table is "
                                        + Show.decimals(Math.abs(c.percentOver().getAsDouble()), 2) + " % "
                                        + (c.percentOver().getAsDouble() < 0 ? "under the " : "over the ") + other
                                : ""),
                Cell.of(c.why().isEmpty() ? "reason not known" : c.why()));
    }

    private static String btuh(Optional<HeatRate> capacity) {
        return capacity.map(h -> Show.whole(h.btuh())).orElse("blank");
    }
}
