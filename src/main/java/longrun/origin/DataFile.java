package longrun.origin;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One of the program's own files of facts: comment lines with the provenance, a line of headings, rows. A wrong row is
 * named by file, row and column.
 */
public final class DataFile {

    private final String name;
    private final List<String> headings;
    private final List<Row> rows;

    private DataFile(String name, List<String> headings) {
        this.name = name;
        this.headings = headings;
        this.rows = new ArrayList<>();
    }

    /**
     * Reads a file of the data folder.
     *
     * @param path within that folder, such as {@code tanks/vapour-pressure.csv}
     * @throws IllegalStateException where the file is missing or has a crooked row
     */
    public static DataFile read(String path) {
        try (InputStream in = DataFile.class.getResourceAsStream("/longrun/data/" + path)) {
            if (in == null) {
                throw new IllegalStateException(path + ": the file is not there");
            }
            return parse(path, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static DataFile parse(String path, BufferedReader reader) throws IOException {
        DataFile file = null;
        int line = 0;
        for (String text = reader.readLine(); text != null; text = reader.readLine()) {
            line++;
            if (text.isBlank() || text.startsWith("#")) {
                continue;
            }
            List<String> cells = List.of(text.split(",", -1));
            if (file == null) {
                file = new DataFile(path, cells);
            } else if (cells.size() != file.headings.size()) {
                throw new IllegalStateException(path + ":" + line + ": " + cells.size()
                        + " cells where the heading has " + file.headings.size());
            } else {
                file.rows.add(file.new Row(line, cells));
            }
        }
        if (file == null) {
            throw new IllegalStateException(path + ": there is no line of headings");
        }
        return file;
    }

    public List<String> headings() {
        return headings;
    }

    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** One row. */
    public final class Row {
        private final int line;
        private final List<String> cells;

        private Row(int line, List<String> cells) {
            this.line = line;
            this.cells = cells;
        }

        public String text(String heading) {
            int column = headings.indexOf(heading);
            if (column < 0) {
                throw new IllegalStateException(name + ": there is no column " + heading);
            }
            return cells.get(column).strip();
        }

        /** The number in a column, empty where the cell is blank. */
        public OptionalDouble findNumber(String heading) {
            String text = text(heading);
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            try {
                return OptionalDouble.of(Double.parseDouble(text));
            } catch (NumberFormatException e) {
                throw new IllegalStateException(at(heading) + ": \"" + text + "\" is no number", e);
            }
        }

        public double number(String heading) {
            return findNumber(heading)
                    .orElseThrow(() -> new IllegalStateException(at(heading) + ": a number is missing"));
        }

        private String at(String heading) {
            return name + ":" + line + ":" + heading;
        }
    }
}
