package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longrun.plan.json.PlanSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a person finds an entry. */
class PlaceKindTest {

    /** Entries that no place asks for: the answers stand at their finding, the rest is for other programs. */
    private static final Set<String> ASKED_NOWHERE = Set.of("answers", "diversity", "prices");

    @ParameterizedTest
    @CsvSource({
        "/name, HOUSE",
        "/site, HOUSE",
        "/site/elevation, HOUSE",
        "/site/mainShutoff, CONNECTIONS",
        "/site/mainShutoff/distance, CONNECTIONS",
        "/site/groundTemp, TANK",
        "/site/monthlyMeanTemp/11, FUEL",
        "/site/coldWater/temp, HOT_WATER",
        "/regulators/0, HOUSE",
        "/regulators/0/outlet, HOUSE",
        "/regulators/10/ventToOpening, CONNECTIONS",
        "/regulators/0/setting, CONNECTIONS",
        "/appliances/3, APPLIANCES",
        "/appliances/3/input, APPLIANCES",
        "/appliances/3/fedBy, ROUTE",
        "/appliances/3/connection/0/distance, CONNECTIONS",
        "/sections/7/legs/2, ROUTE",
        "/fittingAllowance, ROUTE",
        "/tank/gauge, TANK",
        "/tanks/1/gauge, TANK",
        "/use/hotWater, HOT_WATER",
        "/use/heating, FUEL",
        "/deliveries/0/date, FUEL"
    })
    void anEntryIsFoundInThePlaceThatAsksForIt(String pointer, PlaceKind place) {
        assertThat(PlaceKind.find(pointer)).contains(place);
    }

    @Test
    void everyPartOfAPlanHasAPlace() {
        List<String> without = new ArrayList<>();
        PlanSchema.write().path("properties").fieldNames().forEachRemaining(name -> {
            if (PlaceKind.find("/" + name).isEmpty()) {
                without.add(name);
            }
        });
        assertThat(without).isSubsetOf(ASKED_NOWHERE);
    }

    @Test
    void whatIsNoEntryStandsNowhere() {
        assertThat(PlaceKind.find("")).isEmpty();
        assertThat(PlaceKind.find("/")).isEmpty();
        assertThat(PlaceKind.find("/sitefoo")).isEmpty();
        assertThat(PlaceKind.find("/answers/0/who")).isEmpty();
    }
}
