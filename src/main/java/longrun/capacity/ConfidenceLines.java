package longrun.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.capacity.TableFile.Head;
import longrun.origin.Confidence;

/**
 * The head lines that say how sure each cell is: {@code confidence: print rows 10-40}, {@code print row 50 columns 1/4
 * 3/8}, {@code computed rest}. The first line that holds a cell decides it.
 */
final class ConfidenceLines {

    private static final Pattern LINE = Pattern.compile(
            "(print|computed|secondary|memory) (?:rest|rows? ([0-9]+)(?:-([0-9]+))?(?: columns ([^ ].*))?)");

    private record Line(Confidence confidence, double from, double to, List<String> columns) {
        boolean holds(double rowFt, String size) {
            return from <= rowFt && rowFt <= to && (columns.isEmpty() || columns.contains(size));
        }
    }

    private final TableFile file;
    private final List<Line> lines = new ArrayList<>();

    ConfidenceLines(TableFile file, List<String> sizes) {
        this.file = file;
        file.need("confidence");
        for (Head head : file.heads("confidence")) {
            lines.add(line(head, sizes));
        }
    }

    private Line line(Head head, List<String> sizes) {
        Matcher m = LINE.matcher(head.value());
        if (!m.matches()) {
            throw new TableFault(file.name(), head.line(), 1, "'" + head.value() + "' says no confidence");
        }
        String first = m.group(2);
        String last = m.group(3);
        String columns = m.group(4);
        double from = first == null ? 0 : Double.parseDouble(first);
        double to = first == null ? Double.POSITIVE_INFINITY : last == null ? from : Double.parseDouble(last);
        List<String> named = columns == null ? List.of() : List.of(columns.split(" "));
        for (String column : named) {
            if (!sizes.contains(column)) {
                throw new TableFault(file.name(), head.line(), 1, "no column '" + column + "'");
            }
        }
        return new Line(confidence(m.group(1)), from, to, named);
    }

    private static Confidence confidence(String word) {
        return switch (word) {
            case "print" -> Confidence.PRINT;
            case "computed" -> Confidence.COMPUTED;
            case "secondary" -> Confidence.SECONDARY;
            default -> Confidence.MEMORY;
        };
    }

    Confidence at(long fileLine, int fileColumn, double rowFt, String size) {
        for (Line line : lines) {
            if (line.holds(rowFt, size)) {
                return line.confidence();
            }
        }
        throw new TableFault(file.name(), fileLine, fileColumn, "no confidence line holds this cell");
    }
}
