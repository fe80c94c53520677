package longrun.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataFile.Head;
import longrun.origin.DataRow;
import longrun.plan.choice.Named;

/**
 * The head lines that say how sure each cell is: {@code confidence: print rows 10-40}, {@code print row 50 columns 1/4
 * 3/8}, {@code computed rest}. The first line that holds a cell decides it.
 */
final class ConfidenceLines {

    private static final Pattern LINE =
            Pattern.compile("([a-z]+) (?:rest|rows? ([0-9]+)(?:-([0-9]+))?(?: columns ([^ ].*))?)");

    private record Line(Confidence confidence, double from, double to, List<String> columns) {
        boolean holds(double rowFt, String size) {
            return from <= rowFt && rowFt <= to && (columns.isEmpty() || columns.contains(size));
        }
    }

    private final DataFile file;
    private final List<Line> lines = new ArrayList<>();

    ConfidenceLines(DataFile file, List<String> sizes) {
        this.file = file;
        file.need("confidence");
        for (Head head : file.heads("confidence")) {
            lines.add(line(head, sizes));
        }
    }

    private Line line(Head head, List<String> sizes) {
        Matcher m = LINE.matcher(head.value());
        if (!m.matches()) {
            throw file.fault(head.line(), 1, "'" + head.value() + "' says no confidence");
        }
        String first = m.group(2);
        String last = m.group(3);
        String columns = m.group(4);
        double from = first == null ? 0 : Double.parseDouble(first);
        double to = first == null ? Double.POSITIVE_INFINITY : last == null ? from : Double.parseDouble(last);
        List<String> named = columns == null ? List.of() : List.of(columns.split(" "));
        for (String column : named) {
            if (!sizes.contains(column)) {
                throw file.fault(head.line(), 1, "no column '" + column + "'");
            }
        }
        Confidence confidence = Named.find(Confidence.class, m.group(1))
                .orElseThrow(() -> file.fault(head.line(), 1, "'" + m.group(1) + "' is not a confidence"));
        return new Line(confidence, from, to, named);
    }

    Confidence at(DataRow row, double rowFt, String size) {
        for (Line line : lines) {
            if (line.holds(rowFt, size)) {
                return line.confidence();
            }
        }
        throw row.fault(size, "no confidence line holds this cell");
    }
}
