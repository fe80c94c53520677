package longrun.http;

import java.util.List;
import java.util.Map;
import longrun.plan.json.PlanError;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;

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

    private static String count(int errors) {
        return errors == 1 ? "one error" : errors + " errors";
    }

    private static ResponseEntity<ProblemDetail> answer(ProblemDetail problem) {
        return ResponseEntity.status(problem.getStatus())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }
}
