package longrun.origin;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.plan.choice.Named;

/** A row of a file of facts, read by the headings of its columns. */
public final class DataRow {

    private final DataFile file;
    private final SheetLine line;

    DataRow(DataFile file, SheetLine line) {
        this.file = file;
        this.line = line;
    }

    /** What stands in a column; blank where nothing does. */
    public String text(String heading) {
        return line.cells().get(file.column(heading));
    }

    /** The words in a column, one after the other. */
    public List<String> words(String heading) {
        return List.of(text(heading).split(" "));
    }

    /** The number in a column, empty where the cell is blank. */
    public OptionalDouble findNumber(String heading) {
        String text = text(heading);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = PlainNumber.parse(text);
        if (Double.isNaN(value)) {
            throw fault(heading, "'" + text + "' is not a number");
        }
        return OptionalDouble.of(value);
    }

    public double number(String heading) {
        return findNumber(heading).orElseThrow(() -> fault(heading, "a number is missing"));
    }

    /** The number in a column, above nothing. */
    public double positive(String heading) {
        double value = number(heading);
        if (!(value > 0)) {
            throw fault(heading, "'" + text(heading) + "' is not above nothing");
        }
        return value;
    }

    /** The choice a column names, as a plan would write it. */
    public <E extends Enum<E> & Named> E choice(String heading, Class<E> choices) {
        String written = text(heading);
        return Named.find(choices, written)
                .orElseThrow(() -> fault(
                        heading,
                        "'" + written + "' is none of "
                                + Stream.of(choices.getEnumConstants())
                                        .map(Named::written)
                                        .collect(Collectors.joining(", "))));
    }

    /** What is wrong with a cell, at its place. */
    public DataFault fault(String heading, String what) {
        return file.fault(line.number(), file.column(heading) + 1, heading + ": " + what);
    }
}
