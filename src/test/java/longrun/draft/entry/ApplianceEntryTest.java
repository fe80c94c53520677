package longrun.draft.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longrun.draft.entry.ApplianceEntry.Asked;
import longrun.plan.Appliance;
import longrun.plan.Distance;
import longrun.plan.choice.Named;
import longrun.quantity.Elevation;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.rules.Rules;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each entry that an appliance may have is asked, as what it is. */
class ApplianceEntryTest {

    /** The id is the program's own; the hookup is asked part by part, in a place of its own. */
    private static final Set<String> ELSEWHERE = Set.of("id", "connection");

    private static Class<?> holds(RecordComponent component) {
        return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    }

    private static Set<Asked> ways(Class<?> type) {
        if (Named.class.isAssignableFrom(type)) {
            return Set.of(Asked.KIND, Asked.CHOICE);
        }
        if (type == Boolean.class) {
            return Set.of(Asked.YES_NO);
        }
        if (type == HeatRate.class) {
            return Set.of(Asked.HEAT);
        }
        if (type == Pressure.class) {
            return Set.of(Asked.PRESSURE);
        }
        if (type == Elevation.class) {
            return Set.of(Asked.HEIGHT);
        }
        return type == Distance.class ? Set.of(Asked.DISTANCE) : Set.of(Asked.WORDS, Asked.SECTION, Asked.ROOM);
    }

    @Test
    void everyEntryOfAnApplianceIsAskedOnceAndNothingElseIs() {
        assertThat(ApplianceEntry.listAll().stream().map(ApplianceEntry::entry))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(Appliance.class.getRecordComponents())
                        .map(RecordComponent::getName)
                        .filter(n -> !ELSEWHERE.contains(n))
                        .toList());
    }

    @TestFactory
    List<DynamicTest> anEntryIsAskedAsWhatItIsAndItsChoicesAreThePlans() {
        return Arrays.stream(Appliance.class.getRecordComponents())
                .filter(c -> !ELSEWHERE.contains(c.getName()))
                .map(c -> DynamicTest.dynamicTest(c.getName(), () -> {
                    ApplianceEntry entry = ApplianceEntry.listAll().stream()
                            .filter(e -> e.entry().equals(c.getName()))
                            .findFirst()
                            .orElseThrow();
                    assertThat(ways(holds(c))).contains(entry.asked());
                    if (entry.asked() == Asked.CHOICE) {
                        Set<String> offered = new TreeSet<>(entry.choices().keySet());
                        offered.add("none"); // any entry may be a known none
                        Set<String> known = Arrays.stream(holds(c).getEnumConstants())
                                .map(e -> ((Named) e).written())
                                .collect(Collectors.toCollection(TreeSet::new));
                        known.add("none");
                        assertThat(offered).isEqualTo(known);
                    }
                }))
                .toList();
    }

    @Test
    void whatAsksWhereItStandsIsARule() {
        assertThat(ApplianceEntry.listAll(ApplianceEntry.Group.LOCATION))
                .hasSize(5)
                .allMatch(e -> Rules.all().stream().anyMatch(r -> r.name().equals(e.rule())));
    }
}
