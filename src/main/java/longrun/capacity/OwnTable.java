package longrun.capacity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longrun.capacity.CapacityTable.Column;
import longrun.capacity.CapacityTable.TableHead;
import longrun.capacity.CapacityTable.Use;
import longrun.origin.Confidence;
import longrun.origin.DataFault;
import longrun.origin.PlainNumber;
import longrun.origin.SheetLine;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;

/**
 * A capacity table a person loads, such as a tubing maker's: {@code length_ft,13,18}, then one line a length,
 * capacities in thousand Btu/h, shortest length and smallest size first. A cell left empty is no capacity.
 */
public final class OwnTable {

    private static final double GREATEST = 1e9;
    private static final int MOST_SIZES = 100;
    private static final int MOST_LENGTHS = 1000;
    private static final String EXAMPLE = ", write for example length_ft,13,18";

    private final String name;
    private final List<String> faults = new ArrayList<>();

    private OwnTable(String name) {
        this.name = name;
    }

    /**
     * The table, with id {@code own:<name>}.
     *
     * @throws OwnTableFaults with every fault of the sheet at once
     */
    public static CapacityTable ownTable(String name, Material material, Pressure inlet, Pressure drop, String csv) {
        return new OwnTable(name).read(material, inlet, drop, csv);
    }

    private CapacityTable read(Material material, Pressure inlet, Pressure drop, String csv) {
        if (!(drop.psi() > 0) || drop.compareTo(inlet) >= 0) {
            fault(1, 1, "the drop is not between nothing and the inlet pressure, write a smaller drop");
        }
        List<SheetLine> lines = lines(csv);
        List<String> sizes = lines.isEmpty() ? noHeader() : header(lines.get(0), material);
        List<SheetLine> records = lines.isEmpty() ? lines : lines.subList(1, lines.size());
        if (sizes.size() > MOST_SIZES || records.size() > MOST_LENGTHS) {
            fault(1, 1, "more than 100 sizes or 1,000 lengths, write only those in use");
            throw new OwnTableFaults(faults);
        }
        double[] feet = new double[records.size()];
        double[][] thousands = new double[records.size()][sizes.size()];
        for (int r = 0; r < feet.length; r++) {
            row(records.get(r), sizes, feet, thousands, r);
        }
        if (records.isEmpty() && faults.isEmpty()) {
            fault(2, 1, "no lengths, write one line a length, such as 10,49,129");
        }
        if (!faults.isEmpty()) {
            throw new OwnTableFaults(faults);
        }
        return table(material, inlet, drop, sizes, feet, thousands);
    }

    private List<SheetLine> lines(String csv) {
        try {
            return SheetLine.read(name, csv).stream().filter(l -> !l.comment()).toList();
        } catch (DataFault e) {
            fault(1, 1, "the sheet is no CSV, write plain values with commas between them");
            return List.of();
        }
    }

    private List<String> noHeader() {
        if (faults.isEmpty()) {
            fault(1, 1, "the sheet is empty" + EXAMPLE);
        }
        return List.of();
    }

    private List<String> header(SheetLine header, Material material) {
        long line = header.number();
        if (!header.cells().get(0).equals("length_ft")) {
            fault(line, 1, "the first column is '" + header.cells().get(0) + "'" + EXAMPLE);
        }
        List<String> sizes = header.cells().subList(1, header.cells().size());
        if (sizes.isEmpty()) {
            fault(line, 2, "no sizes" + EXAMPLE);
        }
        Set<String> seen = new HashSet<>();
        double before = 0;
        for (int c = 0; c < sizes.size(); c++) {
            String size = sizes.get(c);
            if (size.isEmpty()) {
                fault(line, c + 2, "no size, write the size of this column");
            } else if (!seen.add(size)) {
                fault(line, c + 2, "size " + size + " appears twice, write each size once");
            } else if (material == Material.CSST) {
                double ehd = PlainNumber.parse(size);
                if (!(ehd > before)) {
                    fault(
                            line,
                            c + 2,
                            "'" + size + "' is not an EHD above the one before, write EHD numbers that rise");
                } else {
                    before = ehd;
                }
            }
        }
        return sizes;
    }

    private void row(SheetLine rec, List<String> sizes, double[] feet, double[][] thousands, int r) {
        long line = rec.number();
        feet[r] = number(line, 1, rec.cells().get(0), "a length in feet");
        if (r > 0 && feet[r] <= feet[r - 1]) {
            fault(line, 1, "the length does not rise, write the lines shortest length first, each once");
        }
        int want = sizes.size() + 1;
        if (rec.cells().size() != want) {
            int column = Math.min(want, rec.cells().size()) + 1;
            fault(line, column, rec.cells().size() + " values, write " + want + " as in the first line");
        }
        for (int c = 0; c < sizes.size(); c++) {
            thousands[r][c] =
                    c + 1 < rec.cells().size() ? cell(line, c + 2, rec.cells().get(c + 1)) : Double.NaN;
            trend(line, thousands, r, c);
        }
    }

    private double cell(long line, int column, String text) {
        return text.isEmpty() ? 0 : number(line, column, text, "a capacity in thousand Btu/h, such as 49");
    }

    /** Blank is nothing, so it may stand only at the end of a column and the beginning of a line. */
    private void trend(long line, double[][] thousands, int r, int c) {
        double here = thousands[r][c];
        if (r > 0 && here > thousands[r - 1][c]) {
            fault(line, c + 2, "the capacity rises with length, write no more than the line above");
        }
        if (c > 0 && here < thousands[r][c - 1]) {
            fault(line, c + 2, "the capacity falls with size, write no less than the size before");
        }
    }

    private double number(long line, int column, String text, String what) {
        double value = PlainNumber.parse(text);
        if (value > 0 && value <= GREATEST) {
            return value;
        }
        String shown = text.length() > 20 ? text.substring(0, 20) + "..." : text;
        fault(line, column, "'" + shown + "' is not a positive number, write " + what);
        return Double.NaN;
    }

    private void fault(long line, int column, String what) {
        faults.add(String.format(Locale.ROOT, "%s:%d:%d: %s", name, line, column, what));
    }

    private CapacityTable table(
            Material material, Pressure inlet, Pressure drop, List<String> sizes, double[] feet, double[][] thousands) {
        double[][] btuh = new double[feet.length][sizes.size()];
        Confidence[][] confidence = new Confidence[feet.length][sizes.size()];
        for (int r = 0; r < feet.length; r++) {
            Arrays.fill(confidence[r], Confidence.OWN);
            for (int c = 0; c < sizes.size(); c++) {
                btuh[r][c] = thousands[r][c] > 0 ? 1000 * thousands[r][c] : Double.NaN;
            }
        }
        TableHead head = new TableHead(
                "own:" + name,
                material,
                inlet,
                drop,
                name,
                "loaded by the person",
                "not stated",
                List.of("the maker's table as the person loaded it; not checked against a publication"),
                Use.SIZING,
                false);
        List<Column> columns = sizes.stream()
                .map(s -> new Column(s, Optional.empty(), Optional.empty()))
                .toList();
        return new CapacityTable(head, columns, feet, btuh, confidence);
    }
}
