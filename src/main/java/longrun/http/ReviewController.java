package longrun.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import longrun.plan.json.Reading;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.review.json.ReviewJson;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Takes a plan and answers with its review. */
@RestController
class ReviewController {

    private final Reviewer reviewer;
    private final PlanRequests requests;
    private final ServiceLimits limits;
    private final ObjectMapper json;

    ReviewController(Reviewer reviewer, PlanRequests requests, ServiceLimits limits, ObjectMapper json) {
        this.reviewer = reviewer;
        this.requests = requests;
        this.limits = limits;
        this.json = json;
    }

    /**
     * Reviews a plan.
     *
     * @param parts "piping" leaves out the year and hot water; "all", the default, includes them
     * @param origin whether the origin of every number is included; "false" by default
     */
    @PostMapping(path = "/api/review", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> review(
            @RequestBody(required = false) byte @Nullable [] body,
            @RequestParam(defaultValue = "all") String parts,
            @RequestParam(defaultValue = "false") String origin) {
        ReviewParts wanted = parts.equals("piping") ? ReviewParts.PIPING : ReviewParts.ALL;
        return requests.answer(body, (reading, text) -> answer(reading, wanted, origin.equals("true")));
    }

    private ResponseEntity<?> answer(Reading reading, ReviewParts wanted, boolean withOrigin) throws IOException {
        ObjectNode review = ReviewJson.write(reviewer.review(reading, wanted), reading.unread(), withOrigin);
        AnswerTooLarge.BoundedBytes out =
                new AnswerTooLarge.BoundedBytes(limits.answer().toBytes());
        json.writeValue(out, review);
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(out.written());
    }
}
