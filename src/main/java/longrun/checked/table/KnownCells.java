package longrun.checked.table;

import java.util.HashMap;
import java.util.Map;
import longrun.origin.DataFile;

/** Cells that are known to differ, with the reason. */
final class KnownCells {

    private final Map<String, String> why = new HashMap<>();

    private KnownCells(String file) {
        DataFile.read(file)
                .rows()
                .forEach(r -> why.put(key(r.text("table"), r.number("length_ft"), r.text("size")), r.text("why")));
    }

    static KnownCells read(String file) {
        return new KnownCells(file);
    }

    /** The reason a cell differs, blank where none is known. */
    String why(String table, double lengthFt, String size) {
        return why.getOrDefault(key(table, lengthFt, size), "");
    }

    private static String key(String table, double lengthFt, String size) {
        return table + " " + lengthFt + " " + size;
    }
}
