package longrun.checked.table;

import java.util.HashMap;
import java.util.Map;
import longrun.origin.DataFile;

/** Cells that are known to differ, each with its reason, read from a file. */
final class KnownDifferences {

    private final Map<String, String> why = new HashMap<>();

    private KnownDifferences(String file) {
        DataFile.read(file)
                .rows()
                .forEach(r -> why.put(key(r.text("table"), r.number("length_ft"), r.text("size")), r.text("why")));
    }

    static KnownDifferences read(String file) {
        return new KnownDifferences(file);
    }

    /** The reason why a cell differs; blank where none is recorded. */
    String why(String table, double lengthFt, String size) {
        return why.getOrDefault(key(table, lengthFt, size), "");
    }

    private static String key(String table, double lengthFt, String size) {
        return table + " " + lengthFt + " " + size;
    }
}
