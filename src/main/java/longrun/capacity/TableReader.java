package longrun.capacity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.capacity.CapacityTable.Column;
import longrun.capacity.CapacityTable.TableHead;
import longrun.capacity.CapacityTable.Use;
import longrun.capacity.TableFile.Head;
import longrun.capacity.TableFile.Row;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;

/** Reads a table's file into a {@link CapacityTable} and refuses what is wrong by file:row:column. */
final class TableReader {

    private static final Pattern PRESSURE = Pattern.compile("([0-9.]+) (psi|in w\\.c\\.)");
    private static final Set<String> NOTES = Set.of("provenance", "warning", "checks", "moved rows", "gas", "note");

    private final TableFile file;
    private final List<String> sizes;
    private final List<Row> rows;

    private TableReader(TableFile file) {
        this.file = file;
        Row names = file.names();
        if (!names.fields().get(0).equals("length_ft")) {
            throw new TableFault(file.name(), names.line(), 1, "the first column must be length_ft");
        }
        this.sizes = names.fields().subList(1, names.fields().size());
        this.rows = file.rows();
    }

    static CapacityTable read(String id, TableFile file, Use use) {
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
            throw new TableFault(file.name(), file.names().line(), 1, "no rows");
        }
        ConfidenceLines sure = new ConfidenceLines(file, sizes);
        double[] feet = new double[rows.size()];
        double[][] btuh = new double[rows.size()][sizes.size()];
        Confidence[][] confidence = new Confidence[rows.size()][sizes.size()];
        for (int r = 0; r < feet.length; r++) {
            Row row = rows.get(r);
            feet[r] = file.positive(row.line(), 1, row.fields().get(0));
            if (r > 0 && feet[r] <= feet[r - 1]) {
                throw new TableFault(file.name(), row.line(), 1, "lengths must rise from row to row");
            }
            for (int c = 0; c < sizes.size(); c++) {
                String cell = row.fields().get(c + 1);
                btuh[r][c] = cell.isEmpty() ? Double.NaN : 1000 * file.positive(row.line(), c + 2, cell);
                confidence[r][c] = sure.at(row.line(), c + 2, feet[r], sizes.get(c));
            }
        }
        return new CapacityTable(head, columns, feet, btuh, confidence);
    }

    private Material material() {
        Head head = file.need("material");
        return Arrays.stream(Material.values())
                .filter(m -> m.written().equals(head.value()))
                .findFirst()
                .orElseThrow(() -> new TableFault(file.name(), head.line(), 1, "no material '" + head.value() + "'"));
    }

    private Pressure pressure(String key) {
        Head head = file.need(key);
        Matcher m = PRESSURE.matcher(head.value());
        if (!m.matches()) {
            throw new TableFault(file.name(), head.line(), 1, "'" + head.value() + "' is no pressure");
        }
        double value = file.positive(head.line(), 1, m.group(1));
        return m.group(2).equals("psi") ? Pressure.ofPsi(value) : Pressure.ofInWc(value);
    }

    private List<String> notes() {
        return file.head().stream()
                .filter(h -> NOTES.contains(h.key()))
                .map(h -> h.key().equals("note") ? h.value() : h.key() + ": " + h.value())
                .toList();
    }

    private List<Column> columns(Material material) {
        if (sizes.isEmpty() || sizes.stream().anyMatch(String::isBlank)) {
            throw new TableFault(file.name(), file.names().line(), 2, "a column has no size");
        }
        if (material != Material.CSST) {
            file.need("inside_diameter_in");
        }
        List<String> bores = perColumn("inside_diameter_in");
        List<String> outside = perColumn("outside_diameter_in");
        long line = file.find("inside_diameter_in").map(Head::line).orElse(1L);
        List<Column> columns = new ArrayList<>();
        for (int c = 0; c < sizes.size(); c++) {
            OptionalDouble bore = bores.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(file.positive(line, c + 1, bores.get(c)));
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
            throw new TableFault(
                    file.name(),
                    head.get().line(),
                    Math.min(values.size(), sizes.size()) + 1,
                    values.size() + " values of " + key + " for " + sizes.size() + " columns");
        }
        return values;
    }
}
