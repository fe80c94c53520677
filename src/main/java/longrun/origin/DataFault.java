package longrun.origin;

/** A file of facts that cannot be read as what it should be; the message begins with file:line:column. */
public final class DataFault extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    DataFault(String file, long line, int column, String what) {
        super(file + ":" + line + ":" + column + ": " + what);
    }
}
