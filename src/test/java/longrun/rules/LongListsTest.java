package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.Samples;
import longrun.rules.shape.House;
import org.junit.jupiter.api.Test;

/** Plans longer than any house are judged like every other. */
class LongListsTest {

    @Test
    void everyOneOfFiftyThousandTanksIsAskedAbout() {
        String plan = "{\"format\":\"longrun-plan/1\",\"tanks\":[" + String.join(",", Collections.nCopies(50_000, "{}"))
                + "]}";
        House house = House.of(Samples.plan(plan));
        RuleReport report = Rules.check(house);
        assertThat(report.findings()).hasSizeGreaterThan(50_000);
    }

    @Test
    void hundredThousandSectionsInARowAreReadLikeAnyOther() {
        String sections = IntStream.range(0, 100_000)
                .mapToObj(i -> "{\"id\":\"S" + i + "\",\"from\":\"" + (i == 0 ? "R1" : "S" + (i - 1)) + "\"}")
                .collect(Collectors.joining(","));
        String plan = "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"integral-two-stage\","
                + "\"fedBy\":\"tank\",\"capacity\":\"50000 Btu/h\"}],\"sections\":[" + sections
                + "],\"appliances\":[{\"id\":\"a\",\"input\":\"60000 Btu/h\",\"fedBy\":\"S99999\"}]}";
        House house = House.of(Samples.plan(plan));
        RuleReport report = Rules.check(house);
        assertThat(report.findings()).anyMatch(f -> f.rule().equals("regulator-capacity"));
        assertThat(house.network().servedBy("R1").known().btuh()).isEqualTo(60000);
    }
}
