package longrun.drawing.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;

/** Pictures kept as files to compare with; a new one is written where the system property golden is "write". */
public final class Golden {

    private Golden() {}

    public static void same(String name, String svg) {
        parses(svg);
        if ("write".equals(System.getProperty("golden"))) {
            assertThat(System.getenv("CI"))
                    .as("golden files are not overwritten where CI is set")
                    .isNull();
            try {
                Files.writeString(Path.of("src/test/resources/longrun/drawing", name), svg);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        try (InputStream in = Golden.class.getResourceAsStream("/longrun/drawing/" + name)) {
            String kept = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            boolean written = "write".equals(System.getProperty("golden"));
            assertThat(written ? svg : kept).as(name).isEqualTo(svg);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A picture is well-formed and has no number that is none. */
    static void parses(String svg) {
        try {
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new AssertionError(svg, e);
        }
        assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity").contains("<title>");
    }
}
