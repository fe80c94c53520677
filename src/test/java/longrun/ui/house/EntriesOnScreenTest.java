package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.Set;
import java.util.TreeSet;
import longrun.draft.PlaceKind;
import longrun.draft.demo.DemoHouse;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.json.SchemaPath;
import org.junit.jupiter.api.Test;

/** What the screens ask is what a plan can hold. */
class EntriesOnScreenTest extends OpenHouse {

    private static void collect(Element e, Set<String> out) {
        if (e.isTextNode()) {
            return;
        }
        String at = e.getAttribute("data-at");
        if (at != null && at.startsWith("/")) {
            out.add(at.split(" ")[0]);
        }
        e.getChildren().forEach(c -> collect(c, out));
    }

    @Test
    void everyFieldsEntryStandsInTheFormatOfAPlan() {
        com.fasterxml.jackson.databind.node.ObjectNode house =
                (com.fasterxml.jackson.databind.node.ObjectNode) tree(DemoHouse.json());
        for (ApplianceKind kind : ApplianceKind.values()) {
            house.withArray("appliances")
                    .addObject()
                    .put("id", "x-" + kind.written())
                    .put("kind", kind.written());
        }
        id = store.create("", house.toString()).id();
        Set<String> asked = new TreeSet<>();
        for (PlaceKind place : PlaceKind.values()) {
            collect(open(place.slug()).getElement(), asked);
        }
        assertThat(asked).hasSizeGreaterThan(60);
        assertThat(asked.stream().filter(p -> !SchemaPath.holds(p))).isEmpty();
    }
}
