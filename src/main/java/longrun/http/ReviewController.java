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

/** A plan goes in, its review comes out. */
@RestController
class ReviewController {

    private final Reviewer reviewer;
    private final PlanDesk desk;
    private final ServiceLimits limits;
    private final ObjectMapper json;

    ReviewController(Reviewer reviewer, PlanDesk desk, ServiceLimits limits, ObjectMapper json) {
        this.reviewer = reviewer;
        this.desk = desk;
        this.limits = limits;
        this.json = json;
    }

    /**
     * Reviews a plan.
     *
     * @param parts "piping" leaves the year and hot water out; "all", the default, does not
     * @param origin whether every number's origin is written too
     */
    @PostMapping(path = "/api/review", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> review(
            @RequestBody(required = false) byte @Nullable [] body,
            @RequestParam(defaultValue = "all") String parts,
            @RequestParam(defaultValue = "false") String origin) {
        ReviewParts wanted = parts.equals("piping") ? ReviewParts.PIPING : ReviewParts.ALL;
        return desk.answer(body, (reading, text) -> answer(reading, wanted, origin.equals("true")));
    }

    private ResponseEntity<?> answer(Reading reading, ReviewParts wanted, boolean withOrigin) throws IOException {
        ObjectNode review = ReviewJson.write(reviewer.review(reading, wanted), reading.unread(), withOrigin);
        TooLargeAnswer.Bounded out = new TooLargeAnswer.Bounded(limits.answer().toBytes());
        json.writeValue(out, review);
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(out.written());
    }
}
