package longrun.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Properties;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.origin.DataFile;

/** The program's version and tables, as printed on paper. */
public final class Program {

    private static final String FILE = "/longrun/program.properties";

    private Program() {}

    /** The program's version. */
    public static String version() {
        Properties read = new Properties();
        try (InputStream in = Program.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + ": the file is not there");
            }
            read.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read.getProperty("version", "");
    }

    /**
     * A checksum of the capacity tables and fitting lengths: the first eight hexadecimal digits of the SHA-256 of their
     * files. Two papers with the same one rest on the same tables.
     */
    public static String tablesChecksum() {
        return Tables.MARK;
    }

    /** Worked out once. */
    private static final class Tables {

        static final String MARK = mark();

        private static String mark() {
            try {
                MessageDigest sum = MessageDigest.getInstance("SHA-256");
                for (CapacityTable table : CapacityTables.standard().all()) {
                    sum.update(DataFile.bytes("tables/" + table.id() + ".csv"));
                }
                sum.update(DataFile.bytes("fittings/equivalent-lengths.csv"));
                return HexFormat.of().formatHex(sum.digest(), 0, 4);
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }
}
