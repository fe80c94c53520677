package longrun.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.capacity.CapacityTable.Column;
import longrun.capacity.CapacityTable.TableHead;
import longrun.capacity.CapacityTable.Use;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataFile.Head;
import longrun.origin.DataRow;
import longrun.origin.PlainNumber;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.quantity.Bore;
import longrun.quantity.Pressure;

/** Reads a table's file into a {@link CapacityTable} and refuses what is wrong by file:row:column. */
final class TableReader {

    private static final Pattern PRESSURE = Pattern.compile("([0-9.]+) (psi|in w\\.c\\.)");
    private static final String LENGTH = "length_ft";
    private static final Set<String> NOTES = Set.of("provenance", "warning", "checks", "moved rows", "gas", "note");

    private final DataFile file;
    private final List<String> sizes;
    private final List<DataRow> rows;

    private TableReader(DataFile file) {
        this.file = file;
        List<String> headings = file.headings();
        if (!headings.get(0).equals(LENGTH)) {
            throw file.headingFault(1, "the first column must be " + LENGTH);
        }
        this.sizes = headings.subList(1, headings.size());
        this.rows = file.rows();
    }

    static CapacityTable read(String id, DataFile file, Use use) {
        return new TableReader(file).table(id, use);
    }

    private CapacityTable table(String id, Use use) {
        file.need("units");
        TableHead head = new TableHead(
                id,
                material(),
                pressure("inlet pressure"),
                pressure("pressure drop"),
                file.need("title").value(),
                file.need("source").value(),
                file.need("edition").value(),
                notes(),
                use,
                false);
        List<Column> columns = columns(head.material());
        if (rows.isEmpty()) {
            throw file.headingFault(1, "no rows");
        }
        ConfidenceLines sure = new ConfidenceLines(file, sizes);
        double[] feet = new double[rows.size()];
        double[][] btuh = new double[rows.size()][sizes.size()];
        Confidence[][] confidence = new Confidence[rows.size()][sizes.size()];
        for (int r = 0; r < feet.length; r++) {
            DataRow row = rows.get(r);
            feet[r] = row.positive(LENGTH);
            if (r > 0 && feet[r] <= feet[r - 1]) {
                throw row.fault(LENGTH, "lengths must rise from row to row");
            }
            for (int c = 0; c < sizes.size(); c++) {
                String size = sizes.get(c);
                btuh[r][c] = row.text(size).isEmpty() ? Double.NaN : 1000 * row.positive(size);
                confidence[r][c] = sure.at(row, feet[r], size);
            }
        }
        return new CapacityTable(head, columns, feet, btuh, confidence);
    }

    private Material material() {
        Head head = file.need("material");
        return Named.find(Material.class, head.value())
                .orElseThrow(() -> file.fault(head.line(), 1, "no material '" + head.value() + "'"));
    }

    private Pressure pressure(String key) {
        Head head = file.need(key);
        Matcher m = PRESSURE.matcher(head.value());
        if (!m.matches()) {
            throw file.fault(head.line(), 1, "'" + head.value() + "' is not a pressure");
        }
        double value = positive(head.line(), 1, m.group(1));
        return m.group(2).equals("psi") ? Pressure.ofPsi(value) : Pressure.ofInWc(value);
    }

    private double positive(long line, int column, String text) {
        double value = PlainNumber.parse(text);
        if (!(value > 0)) {
            throw file.fault(line, column, "'" + text + "' is not above nothing");
        }
        return value;
    }

    private List<String> notes() {
        return file.head().stream()
                .filter(h -> NOTES.contains(h.key()))
                .map(h -> h.key().equals("note") ? h.value() : h.key() + ": " + h.value())
                .toList();
    }

    private List<Column> columns(Material material) {
        if (sizes.isEmpty()) {
            throw file.headingFault(2, "no sizes");
        }
        if (material != Material.CSST) {
            file.need("inside_diameter_in");
        }
        List<String> bores = perColumn("inside_diameter_in");
        List<String> outside = perColumn("outside_diameter_in");
        long line = file.find("inside_diameter_in").map(Head::line).orElse(1L);
        List<Column> columns = new ArrayList<>();
        for (int c = 0; c < sizes.size(); c++) {
            Optional<Bore> bore = bores.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Bore.ofInches(positive(line, c + 1, bores.get(c))));
            Optional<String> od = outside.isEmpty() ? Optional.empty() : Optional.of(outside.get(c));
            columns.add(new Column(sizes.get(c), bore, od));
        }
        return columns;
    }

    private List<String> perColumn(String key) {
        Optional<Head> head = file.find(key);
        if (head.isEmpty()) {
            return List.of();
        }
        List<String> values = List.of(head.get().value().split(" "));
        if (values.size() != sizes.size()) {
            throw file.fault(
                    head.get().line(),
                    Math.min(values.size(), sizes.size()) + 1,
                    values.size() + " values of " + key + " for " + sizes.size() + " columns");
        }
        return values;
    }
}
