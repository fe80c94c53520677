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
 * Where the service works plans out: on threads of its own, one fewer than there are processors, so that whoever types
 * at a screen always has one; and for so long and no longer.
 */
@Component
class Desk implements DisposableBean {

    private final ExecutorService workers;
    private final ServiceLimits limits;

    Desk(ServiceLimits limits) {
        this.limits = limits;
        int count = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        workers = Executors.newFixedThreadPool(count, task -> {
            Thread thread = new Thread(task, "service");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /** Works an answer out, or says that it takes too long. */
    ResponseEntity<?> answer(Callable<ResponseEntity<?>> work) {
        Future<ResponseEntity<?>> answer = workers.submit(work);
        try {
            return answer.get(limits.time().toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | CancellationException e) {
            answer.cancel(true);
            return Problems.tooLong(limits.time());
        } catch (InterruptedException e) {
            answer.cancel(true);
            Thread.currentThread().interrupt();
            return Problems.tooLong(limits.time());
        } catch (ExecutionException e) {
            if (e.getCause() instanceof TooLargeAnswer) {
                return Problems.answerTooLarge(limits.answer());
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException("a plan that could be read could not be answered", e.getCause());
        }
    }

    @Override
    public void destroy() {
        workers.shutdownNow();
    }
}
