package longrun.rules.connector;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.finding.Finding;
import longrun.rules.Edits;
import org.junit.jupiter.api.Test;

/** A connector's rating is for the gas its tag names (2018 IFGC 411.1.3.2). */
class ConnectorRatingTest {

    private static Finding finding(String edit) {
        return new ConnectorCapacity()
                .judge(Edits.house("whole-house.json", edit)).stream()
                        .flatMap(v -> v.finding().stream())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void ratingForNaturalGasIsSaidToBeOne() {
        Finding natural = finding("/appliances/1/connection/1/capacity = \"64000 Btu/h\"");
        assertThat(natural.found())
                .endsWith("is rated 64000 Btu/h for natural gas, taken as it stands, for an input of 65000 Btu/h");
        assertThat(natural.remedy()).startsWith("Enter the connector's propane rating from its tag");
    }

    @Test
    void connectorRatedForPropaneIsTooSmall() {
        Finding propane = finding("/appliances/0/connection/2/capacity = \"179999 Btu/h\"");
        assertThat(propane.found()).endsWith("is rated 179999 Btu/h for an input of 180000 Btu/h");
        assertThat(propane.remedy()).startsWith("Fit a connector whose rating covers");
    }
}
