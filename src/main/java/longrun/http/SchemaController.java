package longrun.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.plan.json.PlanSchema;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The JSON Schema of a plan. */
@RestController
class SchemaController {

    @GetMapping(
            path = "/api/plan-schema",
            produces = {"application/schema+json", "application/json"})
    ResponseEntity<ObjectNode> schema() {
        return ResponseEntity.ok(PlanSchema.write());
    }
}
