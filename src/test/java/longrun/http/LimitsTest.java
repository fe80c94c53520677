package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import longrun.http.Service.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What one request may ask of the service. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class LimitsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @LocalServerPort
    private int port;

    private Answer post(String body) throws Exception {
        return Service.ask(
                port, "POST", "/api/review", body, "Host: localhost:" + port, "Content-Type: application/json");
    }

    private static String plan(String rest) {
        return "{\"format\":\"longrun-plan/1\"," + rest + "}";
    }

    private static String list(String item, int count) {
        return "[" + String.join(",", Collections.nCopies(count, item)) + "]";
    }

    /** Common practice: a house of more than these is none. */
    @ParameterizedTest
    @CsvSource({
        "/appliances, 500",
        "/sections, 2000",
        "/rooms, 200",
        "/regulators, 200",
        "/deliveries, 200",
        "/use/occasions, 200"
    })
    void aListLongerThanAHouseHasIsRefusedInWords(String pointer, int most) throws Exception {
        String name = pointer.substring(pointer.lastIndexOf('/') + 1);
        String open = pointer.startsWith("/use/") ? "\"use\":{" : "";
        String close = open.isEmpty() ? "" : "}";
        Answer over = post(plan(open + "\"" + name + "\":" + list("{}", most + 1) + close));
        assertThat(over.status()).isEqualTo(400);
        JsonNode errors = JSON.readTree(over.body()).path("errors");
        assertThat(errors).hasSize(1);
        assertThat(errors.at("/0/pointer").asText()).isEqualTo(pointer);
        assertThat(errors.at("/0/message").asText()).contains("write up to " + most);
        assertThat(post(plan(open + "\"" + name + "\":" + list("{}", most) + close))
                        .status())
                .isEqualTo(200);
    }

    /** A mebibyte of empty appliances, four times at once: refused, and the program answers on. */
    @Test
    void aMebibyteOfNothingIsRefusedAndTheProgramAnswersOn() throws Exception {
        String body = plan("\"appliances\":" + list("{}", 340_000));
        ExecutorService clients = Executors.newFixedThreadPool(4);
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                answers.add(clients.submit(() -> post(body)));
            }
            for (Future<Answer> answer : answers) {
                assertThat(answer.get().status()).isEqualTo(400);
            }
        } finally {
            clients.shutdownNow();
        }
        assertThat(post(plan("\"name\":\"x\"")).status()).isEqualTo(200);
    }

    @Test
    void tooManyErrorsToTellAreCounted() throws Exception {
        String legs = list("\"\"", 200);
        Answer answer = post(plan("\"sections\":" + list("{\"legs\":" + legs + "}", 1500)));
        assertThat(answer.status()).isEqualTo(400);
        JsonNode errors = JSON.readTree(answer.body()).path("errors");
        assertThat(errors).hasSize(1001);
        assertThat(errors.at("/1000/message").asText()).contains("299000 more errors");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "application/xml"})
    void aBodyThatIsNotCalledJsonIsNotTaken(String type) throws Exception {
        for (String path : List.of("/api/review", "/api/report.pdf", "/api/drawing.svg")) {
            assertThat(Service.ask(
                                    port,
                                    "POST",
                                    path,
                                    plan("\"name\":\"x\""),
                                    "Host: localhost:" + port,
                                    "Content-Type: " + type)
                            .status())
                    .as(path)
                    .isEqualTo(415);
        }
        assertThat(Service.ask(port, "POST", "/api/review", plan("\"name\":\"x\""), "Host: localhost:" + port)
                        .status())
                .isEqualTo(415);
    }
}
