package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longrun.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The service as another program meets it. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ServiceTest {

    private static final String HEAD = "{\"format\":\"longrun-plan/1\",";
    private static final ObjectMapper JSON = new ObjectMapper();

    @LocalServerPort
    private int port;

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> post(String path, byte[] body) throws Exception {
        return client.send(
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofByteArray(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return post(path, body.getBytes(StandardCharsets.UTF_8));
    }

    private HttpResponse<String> get(String path) throws Exception {
        return client.send(HttpRequest.newBuilder(uri(path)).build(), BodyHandlers.ofString());
    }

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    @Test
    void theSamplePlanIsReviewedWithThePrintedFigures() throws Exception {
        HttpResponse<String> answer = post("/api/review?parts=piping", Samples.text("sample-plan.json"));
        assertThat(answer.statusCode()).isEqualTo(200);
        JsonNode review = JSON.readTree(answer.body());
        assertThat(review.path("format").asText()).isEqualTo("longrun-review/1");
        assertThat(review.path("connectedLoadBtuh").asDouble()).isEqualTo(245_000);
        assertThat(review.path("connectedLoadComplete").asBoolean()).isTrue();
        assertThat(review.at("/stages/0/side").asText()).isEqualTo("tank-side");
        assertThat(review.at("/stages/1/side").asText()).isEqualTo("house-side");
        assertThat(review.at("/stages/1/longestRunFt").asDouble()).isEqualTo(30.0);
        assertThat(review.at("/sections/0/capacityBtuh").asDouble()).isEqualTo(1_630_000);
        assertThat(review.at("/sections/3/neededSize").asText()).isEqualTo("18");
        assertThat(review.at("/sections/3/status").asText()).isEqualTo("adequate");
    }

    @Test
    void everyErrorOfAPlanComesAtOnceAsAProblem() throws Exception {
        HttpResponse<String> answer = post(
                "/api/review",
                HEAD + "\"sections\":[{\"id\":\"A\",\"from\":\"Z\",\"legs\":[\"3,7 ft\"]},{\"id\":\"A\"}]}");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        assertThat(JSON.readTree(answer.body()).path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder("/sections/0/from", "/sections/0/legs/0", "/sections/1/id");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "7",
                "[]",
                "\"x\"",
                "{",
                "{\"format\":\"longrun-plan/1\",\"sections\":[null]}",
                "{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\",\"input\":NaN}]}",
                "{\"format\":\"longrun-plan/1\",\"site\":{\"people\":1e999}}",
                "{\"format\":\"longrun-plan/1\",\"site\":{\"people\":1e999999999}}",
                "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":{}}]}",
                "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"legs\":[{}]}]}",
                "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"from\":\"A\"}]}",
                "\u0000\u0001"
            })
    void whatCannotBeReadIsAClientsErrorNeverOurs(String body) throws Exception {
        HttpResponse<String> answer = post("/api/review", body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(JSON.readTree(answer.body()).path("errors")).isNotEmpty();
    }

    @Test
    void deepNestingIsRefusedNotSuffered() throws Exception {
        assertThat(post("/api/review", "[".repeat(500_000)).statusCode()).isEqualTo(400);
        assertThat(post("/api/review", HEAD + "\"a\":" + "{\"a\":".repeat(5000) + "1" + "}".repeat(5001))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void aBodyOverOneMebibyteIsTooLargeWhetherItsLengthIsAnnouncedOrNot() throws Exception {
        String padding = " ".repeat(2 << 20);
        HttpResponse<String> announced = post("/api/review", HEAD + "\"name\":\"x\"}" + padding);
        assertThat(announced.statusCode()).isEqualTo(413);
        assertThat(announced.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        HttpResponse<String> chunked = client.send(
                HttpRequest.newBuilder(uri("/api/review"))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(
                                (HEAD + "\"name\":\"x\"}" + padding).getBytes(StandardCharsets.UTF_8))))
                        .build(),
                BodyHandlers.ofString());
        assertThat(chunked.statusCode()).isEqualTo(413);
        String fits = HEAD + "\"name\":\"x\"}";
        assertThat(post("/api/review", fits + " ".repeat((1 << 20) - fits.length()))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void asManySectionsInOneChainAsAHouseMayHaveAreReviewed() throws Exception {
        StringBuilder plan = new StringBuilder(HEAD)
                .append("\"regulators\":[{\"id\":\"R\",\"kind\":\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in"
                        + " w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],\"sections\":[");
        String from = "R";
        for (int i = 0; i < 2000; i++) {
            plan.append(i == 0 ? "" : ",")
                    .append("{\"id\":\"s")
                    .append(i)
                    .append("\",\"from\":\"")
                    .append(from)
                    .append("\",\"material\":\"steel\",\"legs\":[\"0.1 ft\"]}");
            from = "s" + i;
        }
        plan.append("],\"appliances\":[{\"id\":\"a\",\"fedBy\":\"").append(from).append("\",\"input\":\"9 kBtu/h\"}]}");
        HttpResponse<String> answer = post("/api/review?origin=true", plan.toString());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(JSON.readTree(answer.body()).at("/sections/1999/size").asText())
                .isEqualTo("1/2");
    }

    @Test
    void anUnknownPathOrTableIsNotFound() throws Exception {
        for (String path : List.of("/api/tables/none-such", "/api/none-such", "/api/tables/..%2f")) {
            HttpResponse<String> answer = get(path);
            assertThat(answer.statusCode()).as(path).isIn(400, 404);
        }
        assertThat(get("/api/tables/none-such")
                        .headers()
                        .firstValue("Content-Type")
                        .orElse(""))
                .startsWith("application/problem+json");
        assertThat(get("/api/review").statusCode()).isEqualTo(405);
    }

    @Test
    void theTablesAreServedWithTheirProvenance() throws Exception {
        JsonNode list = JSON.readTree(get("/api/tables").body());
        List<String> ids = new ArrayList<>();
        list.forEach(t -> ids.add(t.path("id").asText()));
        assertThat(ids).contains("steel-sch40-11inwc-0.5inwc-propane", "csst-11inwc-0.5inwc-propane");
        JsonNode steel = JSON.readTree(
                get("/api/tables/steel-sch40-11inwc-0.5inwc-propane").body());
        assertThat(steel.path("source").asText()).contains("402.4(28)");
        assertThat(steel.at("/rows/5/lengthFt").asDouble()).isEqualTo(60);
        assertThat(steel.at("/rows/5/capacityBtuh/1").asDouble()).isEqualTo(231_000);
        assertThat(steel.at("/rows/5/confidence/1").asText()).isEqualTo("print");
    }

    @Test
    void thePlansSchemaIsServed() throws Exception {
        JsonNode schema = JSON.readTree(get("/api/plan-schema").body());
        assertThat(schema.at("/properties/sections")).isNotEmpty();
        assertThat(schema.at("/$defs/Section/properties/material").toString()).contains("pe-pipe");
    }

    @Test
    void onlyThisComputerIsAnswered() throws Exception {
        List<InetAddress> others = new ArrayList<>();
        for (NetworkInterface n : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            Collections.list(n.getInetAddresses()).stream()
                    .filter(a -> !a.isLoopbackAddress())
                    .forEach(others::add);
        }
        for (InetAddress address : others) {
            boolean answered;
            try (Socket s = new Socket(address, port)) {
                answered = s.isConnected();
            } catch (IOException e) {
                answered = false;
            }
            assertThat(answered).as(address.toString()).isFalse();
        }
    }
}
