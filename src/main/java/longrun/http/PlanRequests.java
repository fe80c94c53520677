package longrun.http;

import java.util.concurrent.Callable;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/**
 * Reads the plan in a request's body and has its answer worked out by the {@link ServiceWorkers}. A plan that can't be read
 * is answered with its errors.
 */
@Component
class PlanRequests {

    /** Makes the answer to a plan that could be read. */
    interface Work {
        ResponseEntity<?> answer(Reading reading, String text) throws Exception;
    }

    private final ServiceWorkers workers;
    private final ServiceLimits limits;

    PlanRequests(ServiceWorkers workers, ServiceLimits limits) {
        this.workers = workers;
        this.limits = limits;
    }

    ResponseEntity<?> answer(byte @Nullable [] body, Work work) {
        Callable<ResponseEntity<?>> all = () -> {
            String text = JsonText.decode(body);
            Reading reading = FullPlanReader.read(text, limits.plan());
            return reading.plan().isEmpty() ? Problems.unreadable(reading.errors()) : work.answer(reading, text);
        };
        return workers.answer(all);
    }
}
