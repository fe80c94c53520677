package longrun.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** What this program says of itself on paper. */
public final class Program {

    private static final String FILE = "/longrun/program.properties";

    private Program() {}

    /** Its version, as the build knows it. */
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
}
