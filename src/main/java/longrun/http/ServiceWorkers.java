package longrun.http;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/**
 * The threads on which the service works out plans, one fewer than there are processors, so that one is always left for
 * whoever types at a screen. Each answer has a time limit.
 */
@Component
class ServiceWorkers implements DisposableBean {

    private final ExecutorService workers;
    private final ServiceLimits limits;

    ServiceWorkers(ServiceLimits limits) {
        this.limits = limits;
        int count = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        workers = Executors.newFixedThreadPool(count, task -> {
            Thread thread = new Thread(task, "service");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /**
     * Works out an answer, or answers 503 when the time is up and 400 where the answer is too large.
     *
     * @throws IllegalStateException where working it out fails
     */
    ResponseEntity<?> answer(Callable<ResponseEntity<?>> work) {
        Future<ResponseEntity<?>> answer = workers.submit(work);
        try {
            return answer.get(limits.time().toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | CancellationException e) {
            answer.cancel(true);
            return Problems.timedOut(limits.time());
        } catch (InterruptedException e) {
            answer.cancel(true);
            Thread.currentThread().interrupt();
            return Problems.timedOut(limits.time());
        } catch (ExecutionException e) {
            if (e.getCause() instanceof AnswerTooLarge) {
                return Problems.answerTooLarge(limits.answer());
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException("the answer to a readable plan could not be worked out", e.getCause());
        }
    }

    @Override
    public void destroy() {
        workers.shutdownNow();
    }
}
