package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import longrun.Samples;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The papers as another program asks for them. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class PapersServiceTest {

    @LocalServerPort
    private int port;

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<byte[]> post(String path, String body) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofByteArray());
    }

    @Test
    void theDrawingComesOnASheetWithTheDayOfTheGaugeReading() throws Exception {
        HttpResponse<byte[]> answer = post("/api/report.pdf?sheet=drawing", Samples.text("sample-plan.json"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/pdf");
        try (PDDocument pdf = Loader.loadPDF(answer.body())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("Fernbank cottage", "1 October 2026");
        }
    }

    @Test
    void theDrawingComesAsAPicture() throws Exception {
        HttpResponse<byte[]> answer = post("/api/drawing.svg", Samples.text("sample-plan.json"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("image/svg+xml");
        assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                .startsWith("<svg")
                .contains("EHD 30");
    }

    @Test
    void thePartsListComesForASpreadsheet() throws Exception {
        HttpResponse<byte[]> answer = post("/api/materials.csv", Samples.text("sample-plan.json"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/csv;charset=UTF-8");
        assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
                .contains("longrun-materials.csv");
        assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                .startsWith("group,item,size,count,unit,")
                .contains("CSST end fitting");
        assertThat(post("/api/materials.csv", "{\"format\":\"longrun-plan/1\"}").statusCode())
                .isEqualTo(200);
        assertThat(post("/api/materials.csv", "{}").statusCode()).isEqualTo(400);
    }

    @Test
    void anEmptyHouseMakesPapersToo() throws Exception {
        assertThat(post("/api/report.pdf", "{\"format\":\"longrun-plan/1\"}").statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "sheet=nothing, 404, There is no sheet of that name",
        "paper=quarto, 400, paper must be letter or a4",
        "date=tomorrow, 400, 'date must be a date, year first'"
    })
    void whatCannotBeReadBesideThePlanIsSaid(String question, int status, String words) throws Exception {
        HttpResponse<byte[]> answer = post("/api/report.pdf?" + question, Samples.text("sample-plan.json"));
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains(words);
    }

    @Test
    void aPlanThatCannotBeReadMakesNoPaper() throws Exception {
        assertThat(post("/api/report.pdf", "{\"format\":\"longrun-plan/1\",\"sections\":7}")
                        .statusCode())
                .isEqualTo(400);
    }
}
