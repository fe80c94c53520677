package longrun.http;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import longrun.plan.json.PlanError;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.util.unit.DataSize;

/** Answers to requests that fail, as problem details (RFC 9457). */
final class Problems {

    private Problems() {}

    /** 400 with every error of a plan that can't be read, each with the JSON pointer of its entry. */
    static ResponseEntity<ProblemDetail> unreadable(List<PlanError> errors) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.BAD_REQUEST,
                "The plan can't be read: " + count(errors.size()) + ", each with what to write instead.");
        problem.setTitle("Plan can't be read");
        problem.setProperty(
                "errors",
                errors.stream()
                        .map(e -> Map.of("pointer", e.pointer(), "message", e.message()))
                        .toList());
        return answer(problem);
    }

    /** 404. */
    static ResponseEntity<ProblemDetail> notFound(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, what);
        problem.setTitle("Not found");
        return answer(problem);
    }

    /** 400 where a parameter of the address can't be read. */
    static ResponseEntity<ProblemDetail> badParameter(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, what);
        problem.setTitle("Parameter can't be read");
        return answer(problem);
    }

    /** 503 where the answer takes longer than the time limit. */
    static ResponseEntity<ProblemDetail> timedOut(Duration time) {
        return answer(busy("The plan was not worked out within " + time.toSeconds()
                + " s. Ask again when the computer is less busy, or send a smaller plan."));
    }

    /** 415 where the content type of a body is not JSON. */
    static ProblemDetail notJson() {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.UNSUPPORTED_MEDIA_TYPE, "A plan is JSON. Send it with Content-Type: application/json.");
        problem.setTitle("Content type is not JSON");
        return problem;
    }

    /** 503 while the service is busy. */
    static ProblemDetail busy(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE, what);
        problem.setTitle("Service busy");
        return problem;
    }

    /** 400 where the answer to a plan would be over the size limit. */
    static ResponseEntity<ProblemDetail> answerTooLarge(DataSize limit) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.BAD_REQUEST,
                "The answer would be over " + limit.toMegabytes()
                        + " MiB. Ask without origin, or send a smaller plan.");
        problem.setTitle("Answer too large");
        return answer(problem);
    }

    private static String count(int errors) {
        return errors == 1 ? "one error" : errors + " errors";
    }

    private static ResponseEntity<ProblemDetail> answer(ProblemDetail problem) {
        return ResponseEntity.status(problem.getStatus())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }
}
