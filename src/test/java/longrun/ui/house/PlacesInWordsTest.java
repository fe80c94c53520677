package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longrun.draft.PlaceKind;
import longrun.draft.demo.DemoHouse;
import longrun.review.RawNames;
import longrun.ui.Shown;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** No place of the demo house shows a name of the format, whatever is folded up in it; where from names the rule. */
class PlacesInWordsTest extends OpenHouse {

    @BeforeEach
    void demo() {
        id = store.create("", DemoHouse.json()).id();
    }

    @Test
    void everyPlaceIsInWordsPeopleUse() {
        List<String> found = new ArrayList<>();
        for (PlaceKind place : PlaceKind.values()) {
            for (String each : Shown.pieces(open(place.slug()).getElement())) {
                if (each.startsWith("Rule ")) {
                    continue;
                }
                RawNames.in(each).forEach(n -> found.add(place + ": " + n + " in: " + each));
                if (each.contains("degF")) {
                    found.add(place + ": degF in: " + each);
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
