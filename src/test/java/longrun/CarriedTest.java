package longrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The list of what the jar carries, in the form of CycloneDX; the build writes it. */
class CarriedTest {

    @Test
    void everyLibraryCarriedIsListedWithALicence() throws Exception {
        String text;
        try (InputStream in = getClass().getResourceAsStream("/META-INF/sbom/application.cdx.json")) {
            assumeTrue(in != null, "skipped: the list is written by the build alone");
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        JsonNode list = new ObjectMapper().readTree(text);
        assertThat(list.path("bomFormat").asText()).isEqualTo("CycloneDX");
        List<String> names = new ArrayList<>();
        for (JsonNode each : list.path("components")) {
            String name = each.path("name").asText();
            names.add(name);
            assertThat(each.path("licenses")).as(name).isNotEmpty();
        }
        assertThat(names)
                .contains("h2", "flow-server", "openhtmltopdf-pdfbox", "commons-lang3")
                .doesNotContain("junit-jupiter-api", "playwright");
        assertThat(text)
                .as("nothing of the computer it was built on")
                .doesNotContain(
                        System.getProperty("user.home") + "/", Path.of("").toAbsolutePath() + "/", "file:/");
    }
}
