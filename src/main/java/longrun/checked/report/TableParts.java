package longrun.checked.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.checked.table.CellApart;
import longrun.checked.table.EquationCheck;
import longrun.checked.table.SecondReading;
import longrun.quantity.HeatRate;
import longrun.quantity.Show;

/** Capacity tables against the equation and against a second keying. */
final class TableParts {

    private TableParts() {}

    static Part equation() {
        List<List<Cell>> rows = new ArrayList<>();
        List<List<Cell>> apart = new ArrayList<>();
        for (EquationCheck c : EquationCheck.listAll()) {
            rows.add(List.of(
                    name(c.table()),
                    Cell.of(c.printed()),
                    Cell.of(c.printedSame()),
                    Cell.of(c.computed()),
                    Cell.of(c.apart().size())));
            c.apart().forEach(cell -> apart.add(cell(c.table(), cell, "equation")));
        }
        return new Part(
                "equation",
                "Capacity tables against the code's equation",
                List.of(
                        "The equation in flow form, rounded as the code prints it (2018 International Fuel Gas Code, 402.4 and"
                                + " Appendix A.4), with 2,488 Btu a cubic foot. A figure that was made by that equation, because no"
                                + " print of its row was at hand, proves nothing and is counted apart.",
                        "Corrugated tubing has no bore, so no equation holds its tables: see the second keying."),
                List.of(
                        new Grid(
                                "Table by table",
                                rows.size() + " tables",
                                List.of(
                                        "Table",
                                        "Read in print",
                                        "Of these the same",
                                        "Made by the equation",
                                        "Differ"),
                                rows),
                        new Grid(
                                "Every figure that differs",
                                apart.size() + " figures, each with its reason",
                                List.of("Table", "Where", "Table, Btu/h", "Equation, Btu/h", "Why"),
                                apart)));
    }

    static Part second() {
        List<List<Cell>> rows = new ArrayList<>();
        List<List<Cell>> apart = new ArrayList<>();
        for (SecondReading s : SecondReading.listAll()) {
            rows.add(List.of(
                    Cell.of(s.table().title(), s.source()),
                    Cell.of(s.cells()),
                    Cell.of(s.cells() - s.apart().size()),
                    Cell.of(s.apart().size())));
            s.apart().forEach(cell -> apart.add(cell(s.table(), cell, "second reading")));
        }
        List<Grid> grids = new ArrayList<>();
        grids.add(new Grid(
                "Table by table",
                rows.size() + " tables",
                List.of("Table", "Keyed twice", "Of these the same", "Differ"),
                rows));
        if (!apart.isEmpty()) {
            grids.add(new Grid(
                    "Every figure that differs",
                    apart.size() == 1 ? "one figure, with its reason" : apart.size() + " figures, each with its reason",
                    List.of("Table", "Where", "Table, Btu/h", "Second reading, Btu/h", "Why"),
                    apart));
        }
        String once = String.join(
                "; ",
                SecondReading.listKeyedOnce().stream().map(CapacityTable::title).toList());
        return new Part(
                "keyed-twice",
                "Tables keyed a second time",
                List.of(
                        "The rows of each page that could be read again were keyed anew, without the first at hand, and both"
                                + " are compared figure by figure.",
                        "Keyed once: " + once
                                + ". The corrected steel table is held to its print by the one as printed."),
                grids);
    }

    private static Cell name(CapacityTable table) {
        return Cell.of(table.title(), table.source());
    }

    private static List<Cell> cell(CapacityTable table, CellApart c, String other) {
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
                Cell.of(c.why().isEmpty() ? "no reason is known" : c.why()));
    }

    private static String btuh(Optional<HeatRate> capacity) {
        return capacity.map(h -> Show.whole(h.btuh())).orElse("blank");
    }
}
