package longrun.capacity;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A data file as text: head lines ({@code # key: value}), one line of column names, then the records; every record has
 * as many fields as there are names.
 *
 * @param name the file's name, for messages
 */
record TableFile(String name, List<Head> head, Row names, List<Row> rows) {

    private static final String FOLDER = "/longrun/data/";

    /** A head line, its key before the first colon. */
    record Head(long line, String key, String value) {}

    /** A record and the line it stands on. */
    record Row(long line, List<String> fields) {}

    TableFile {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** Reads a file of the data folder from the class path, such as {@code tables/index.csv}. */
    static TableFile load(String path) {
        try (InputStream in = TableFile.class.getResourceAsStream(FOLDER + path)) {
            if (in == null) {
                throw new TableFault(path, 1, 1, "the file is missing");
            }
            return parse(path, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static TableFile parse(String name, String text) {
        List<Head> head = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        Row names = null;
        for (CsvRecord rec : CsvReader.builder()
                .commentStrategy(CommentStrategy.READ)
                .ignoreDifferentFieldCount(true)
                .ofCsvRecord(text)) {
            Row row = new Row(rec.getStartingLineNumber(), List.copyOf(rec.getFields()));
            if (rec.isComment()) {
                head.add(head(row.line(), rec.getField(0)));
            } else if (names == null) {
                names = row;
            } else {
                checkWidth(name, names, row);
                rows.add(row);
            }
        }
        return new TableFile(name, head, named(name, names), rows);
    }

    private static Row named(String name, @Nullable Row names) {
        if (names == null) {
            throw new TableFault(name, 1, 1, "no line of column names");
        }
        return names;
    }

    private static Head head(long line, String comment) {
        int colon = comment.indexOf(':');
        return colon < 0
                ? new Head(line, "", comment.strip())
                : new Head(
                        line,
                        comment.substring(0, colon).strip(),
                        comment.substring(colon + 1).strip());
    }

    private static void checkWidth(String name, Row names, Row row) {
        int want = names.fields().size();
        int have = row.fields().size();
        if (have != want) {
            throw new TableFault(
                    name, row.line(), Math.min(have, want) + 1, have + " columns where the names are " + want);
        }
    }

    List<Head> heads(String key) {
        return head.stream().filter(h -> h.key().equals(key)).toList();
    }

    Optional<Head> find(String key) {
        return head.stream().filter(h -> h.key().equals(key)).findFirst();
    }

    Head need(String key) {
        return find(key).orElseThrow(() -> new TableFault(name, 1, 1, "the head line '" + key + ":' is missing"));
    }

    /** A plain positive number, or the fault that names its place. */
    double positive(long line, int column, String text) {
        double value = PlainNumber.parse(text);
        if (!(value > 0)) {
            throw new TableFault(name, line, column, "'" + text + "' is not a positive number");
        }
        return value;
    }
}
