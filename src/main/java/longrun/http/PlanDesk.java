package longrun.http;

import java.util.concurrent.Callable;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** Reads the plan in a request's body and works its answer out at the {@link Desk}; a plan that can't be read is told why. */
@Component
class PlanDesk {

    /** What is made of a plan that could be read. */
    interface Work {
        ResponseEntity<?> answer(Reading reading, String text) throws Exception;
    }

    private final Desk desk;
    private final ServiceLimits limits;

    PlanDesk(Desk desk, ServiceLimits limits) {
        this.desk = desk;
        this.limits = limits;
    }

    ResponseEntity<?> answer(byte @Nullable [] body, Work work) {
        Callable<ResponseEntity<?>> all = () -> {
            String text = JsonText.decode(body);
            Reading reading = FullPlanReader.read(text, limits.plan());
            return reading.plan().isEmpty() ? Problems.unreadable(reading.errors()) : work.answer(reading, text);
        };
        return desk.answer(all);
    }
}
