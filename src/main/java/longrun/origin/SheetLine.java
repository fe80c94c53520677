package longrun.origin;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of a sheet whose values stand between commas: of the program's own files of facts and of those a person brings.
 *
 * @param number the line it begins on, from 1
 * @param comment whether it begins with #, and its one cell is what stands behind
 * @param cells without the blanks about them
 */
public record SheetLine(long number, boolean comment, List<String> cells) {

    public SheetLine {
        cells = List.copyOf(cells);
    }

    /**
     * Every line that is not empty, comments among them.
     *
     * @param name of the sheet, for what is wrong with it
     * @throws DataFault if a value in it has no end
     */
    public static List<SheetLine> read(String name, String text) {
        List<SheetLine> out = new ArrayList<>();
        long line = 0;
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.READ)
                .ignoreDifferentFieldCount(true)
                .ofCsvRecord(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            for (CsvRecord rec : records) {
                line = rec.getStartingLineNumber();
                List<String> cells = rec.getFields().stream().map(String::strip).toList();
                if (cells.size() > 1 || !cells.get(0).isEmpty()) {
                    out.add(new SheetLine(line, rec.isComment(), cells));
                }
            }
        } catch (CsvParseException | java.io.IOException e) {
            throw new DataFault(name, line + 1, 1, "a value without end; write plain values with commas between them");
        }
        return out;
    }
}
