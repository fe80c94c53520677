package longrun.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.plan.json.Reading;
import longrun.review.Parts;
import longrun.review.PlanDoor;
import longrun.review.Reviewer;
import longrun.review.json.ReviewJson;
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

    ReviewController(Reviewer reviewer) {
        this.reviewer = reviewer;
    }

    /**
     * Reviews a plan.
     *
     * @param parts "piping" leaves the year and hot water out; "all", the default, does not
     * @param origin whether every number's origin is written too
     */
    @PostMapping(path = "/api/review", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> review(
            @RequestBody(required = false) byte[] body,
            @RequestParam(defaultValue = "all") String parts,
            @RequestParam(defaultValue = "false") String origin) {
        Reading reading = PlanDoor.read(JsonText.decode(body));
        if (reading.plan().isEmpty()) {
            return Problems.unreadable(reading.errors());
        }
        Parts wanted = parts.equals("piping") ? Parts.PIPING : Parts.ALL;
        ObjectNode review = ReviewJson.write(reviewer.review(reading, wanted), reading.unread(), origin.equals("true"));
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(review);
    }
}
