package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import longrun.Samples;
import longrun.http.Service.Answer;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.ResponseEntity;

/** Limits that whoever starts the program sets, here so tight that they are met. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {"longrun.limits.sections=3", "longrun.limits.answer=2KB", "longrun.limits.time=2s"})
class TightLimitsTest {

    @LocalServerPort
    private int port;

    @Autowired
    private ServiceWorkers workers;

    private Answer post(String body) throws Exception {
        return Service.ask(
                port, "POST", "/api/review", body, "Host: localhost:" + port, "Content-Type: application/json");
    }

    @Test
    void aLimitIsSetAtTheStart() throws Exception {
        Answer answer = post(Samples.text("sample-plan.json"));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(new ObjectMapper()
                        .readTree(answer.body())
                        .at("/errors/0/message")
                        .asText())
                .contains("write up to 3");
    }

    @Test
    void anAnswerOverItsSizeIsNotSent() throws Exception {
        Answer answer = post("{\"format\":\"longrun-plan/1\",\"appliances\":[{},{},{},{}]}");
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("The answer would be over");
    }

    /** It is answered at the limit of time, and whoever works on it is told to stop. */
    @Test
    void aPlanThatTakesTooLongIsGivenUp() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        ResponseEntity<?> answer = workers.answer(() -> {
            begun.countDown();
            try {
                Thread.sleep(600_000);
            } catch (InterruptedException e) {
                stopped.countDown();
                throw e;
            }
            return ResponseEntity.ok().build();
        });
        assertThat(answer.getStatusCode().value()).isEqualTo(503);
        stopped.await(); // who worked on it was told to stop
        assertThat(begun.getCount()).isZero();
    }

    /** Whoever types at a screen has a processor of its own: the service works on one fewer than there are. */
    @Test
    void theServiceLeavesAProcessorToWhoeverTypes() throws Exception {
        AtomicInteger now = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        Thread[] askers = new Thread[8];
        for (int i = 0; i < askers.length; i++) {
            askers[i] = new Thread(() -> workers.answer(() -> {
                most.accumulateAndGet(now.incrementAndGet(), Math::max);
                Thread.sleep(50);
                now.decrementAndGet();
                return ResponseEntity.ok().build();
            }));
            askers[i].start();
        }
        for (Thread asker : askers) {
            asker.join();
        }
        assertThat(most.get()).isBetween(1, Math.max(1, Runtime.getRuntime().availableProcessors() - 1));
    }
}
