package longrun.checked.doubt;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * The confidence of the facts in one file of data: of each cell of a capacity table, of each row of any other file.
 *
 * @param what what the file holds
 * @param counted the number of facts by confidence; empty where the file gives one confidence for the whole
 * @param says what the head of the file says about them
 */
public record FileConfidence(String file, String what, Map<Confidence, Integer> counted, String says) {

    private static final String MARK = "confidence";

    private static final class Holder {
        static final List<FileConfidence> ALL = DataFile.read("checked/files.csv").rows().stream()
                .map(FileConfidence::of)
                .toList();
    }

    /** All files of facts. */
    public static List<FileConfidence> listAll() {
        return Holder.ALL;
    }

    /** How many of its facts have a confidence. */
    public int count(Confidence confidence) {
        return counted.getOrDefault(confidence, 0);
    }

    private static FileConfidence of(DataRow row) {
        String path = row.text("file");
        DataFile file = DataFile.read(path);
        Map<Confidence, Integer> counted = new EnumMap<>(Confidence.class);
        Optional<CapacityTable> table = CapacityTables.standard().all().stream()
                .filter(t -> path.equals("tables/" + t.id() + ".csv"))
                .findFirst();
        table.ifPresent(t -> count(t, counted));
        if (file.headings().contains(MARK)) {
            file.rows().forEach(r -> counted.merge(r.choice(MARK, Confidence.class), 1, Integer::sum));
        }
        String says = file.find("provenance").map(DataFile.Head::value).orElse("");
        if (counted.isEmpty() && says.isEmpty()) {
            says = file.need(MARK).value();
        }
        return new FileConfidence(path, row.text("what"), counted, says);
    }

    private static void count(CapacityTable table, Map<Confidence, Integer> counted) {
        for (int r = 0; r < table.rowCount(); r++) {
            for (int c = 0; c < table.sizes().size(); c++) {
                if (table.cell(r, c).capacity().isPresent()) {
                    counted.merge(table.cell(r, c).confidence(), 1, Integer::sum);
                }
            }
        }
    }
}
