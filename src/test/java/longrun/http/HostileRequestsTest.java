package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import longrun.PlanCount;
import longrun.http.Service.Answer;
import longrun.plan.MutatedPlans;
import longrun.plan.json.SchemaPath;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Plans as a clumsy or hostile hand may send them, through the whole service. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class HostileRequestsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long SEED = 20_261_128;
    private static final int PLANS = PlanCount.HOSTILE.plans();
    private static final Duration MOST = Duration.ofSeconds(1);

    @LocalServerPort
    private int port;

    private record Asked(ObjectNode plan, Future<Timed> answer) {}

    private record Timed(Answer answer, Duration took) {}

    private Timed ask(ObjectNode plan) throws Exception {
        long start = System.nanoTime();
        Answer answer = Service.ask(
                port,
                "POST",
                "/api/review",
                plan.toString(),
                "Host: localhost:" + port,
                "Content-Type: application/json");
        return new Timed(answer, Duration.ofNanos(System.nanoTime() - start));
    }

    /** None is a fault of ours, none takes over a second, and what is told of it is told where it stands. */
    @Test
    void mutatedPlansAreReadOrRefusedWithinASecondEachPlaceTold() throws Exception {
        MutatedPlans mutated = new MutatedPlans(SEED);
        ExecutorService clients = Executors.newFixedThreadPool(2);
        int read = 0;
        int asked = 0;
        try {
            while (asked < PLANS) {
                List<Asked> some = new ArrayList<>();
                for (int k = 0; k < 500 && asked + k < PLANS; k++) {
                    ObjectNode plan = mutated.next();
                    some.add(new Asked(plan, clients.submit(() -> ask(plan))));
                }
                for (Asked one : some) {
                    Timed timed = one.answer().get();
                    String as = "seed " + SEED + ", plan " + asked++ + ": " + one.plan();
                    assertThat(timed.answer().status()).as(as).isIn(200, 400);
                    soonEnough(timed, one.plan(), as);
                    places(timed.answer(), one.plan(), as);
                    read += timed.answer().status() == 200 ? 1 : 0;
                }
            }
        } finally {
            clients.shutdownNow();
        }
        assertThat(read).isBetween(PLANS / 10, PLANS * 9 / 10);
    }

    /** A machine busy with something else may be late once; a plan that takes its time takes it each time. */
    private void soonEnough(Timed first, ObjectNode plan, String as) throws Exception {
        Duration least = first.took();
        for (int again = 0; again < 3 && least.compareTo(MOST) > 0; again++) {
            Duration took = ask(plan).took();
            least = took.compareTo(least) < 0 ? took : least;
        }
        assertThat(least).as(as).isLessThanOrEqualTo(MOST);
    }

    private static void places(Answer answer, ObjectNode plan, String as) throws Exception {
        JsonNode body = JSON.readTree(answer.body());
        if (answer.status() == 400) {
            assertThat(body.path("errors")).as(as).isNotEmpty();
            body.path("errors").forEach(e -> {
                String pointer = e.path("pointer").asText();
                assertThat(plan.at(pointer).isMissingNode())
                        .as("%s at %s", as, pointer)
                        .isFalse();
                assertThat(e.path("message").asText()).as(as).isNotBlank();
            });
            return;
        }
        body.path("findings").forEach(f -> {
            String field = f.path("field").asText();
            if (!field.isEmpty()) {
                assertThat(SchemaPath.holds(field))
                        .as("%s is an entry; %s", field, as)
                        .isTrue();
                assertThat(itsItemsStand(plan, field))
                        .as("%s stands; %s", field, as)
                        .isTrue();
            }
        });
    }

    /** An entry may be one that is not there yet, but never of an item that is not. */
    private static boolean itsItemsStand(JsonNode plan, String pointer) {
        JsonNode at = plan;
        for (String step : pointer.substring(1).split("/")) {
            boolean item = step.matches("[0-9]+");
            if (item && at.isArray() && Integer.parseInt(step) >= at.size()) {
                return false;
            }
            at = item ? at.path(Integer.parseInt(step)) : at.path(step);
        }
        return true;
    }
}
