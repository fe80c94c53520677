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

/** Answers that say what is wrong (RFC 9457). */
final class Problems {

    private Problems() {}

    /** 400 with every error of a plan that can't be read. */
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

    static ResponseEntity<ProblemDetail> notFound(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, what);
        problem.setTitle("Not found");
        return answer(problem);
    }

    /** 400 where what is asked beside the plan can't be read. */
    static ResponseEntity<ProblemDetail> wrongQuestion(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, what);
        problem.setTitle("The question can't be read");
        return answer(problem);
    }

    /** 503 where a plan takes longer than anybody waits. */
    static ResponseEntity<ProblemDetail> tooLong(Duration time) {
        return answer(busy("The plan was not worked out within " + time.toSeconds()
                + " s: ask again when less is going on, or send a smaller one."));
    }

    /** 415 where a body is not called JSON. */
    static ProblemDetail notJson() {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.UNSUPPORTED_MEDIA_TYPE, "A plan is JSON: send it with Content-Type: application/json.");
        problem.setTitle("Not called JSON");
        return problem;
    }

    /** 503 for now. */
    static ProblemDetail busy(String what) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE, what);
        problem.setTitle("Not now");
        return problem;
    }

    /** 400 where the answer to a plan would be over its bound. */
    static ResponseEntity<ProblemDetail> answerTooLarge(DataSize most) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.BAD_REQUEST,
                "The answer would be over " + most.toMegabytes()
                        + " MiB: ask without origin, or send a plan with less in it.");
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
