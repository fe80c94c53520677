package longrun.capacity;

import java.util.Locale;

/** A data file that cannot be read as what it should be; the message begins with file:row:column. */
public final class TableFault extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    TableFault(String file, long row, int column, String what) {
        super(String.format(Locale.ROOT, "%s:%d:%d: %s", file, row, column, what));
    }
}
