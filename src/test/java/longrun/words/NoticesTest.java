package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import org.junit.jupiter.api.Test;

/** Notices that are no rules stand once, and only where a house has what they are about. */
class NoticesTest {

    @Test
    void aHouseWithoutTubingHearsNothingOfItsJacket() {
        assertThat(Notices.of(Samples.plan("{\"format\":\"longrun-plan/1\"}"))).isEmpty();
        assertThat(Notices.of(Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"material\":\"steel\"}]}")))
                .isEmpty();
        assertThat(Notices.of(Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"material\":\"csst\"}]}")))
                .extracting(Notices::place)
                .containsExactly("route");
    }

    @Test
    void theSmellOfANewTankStandsAtTheTankAndSnowAtTheRegulators() {
        assertThat(Notices.of(Samples.sample())).extracting(Notices::place).contains("tank", "connections");
        assertThat(Notices.of(Samples.sample())).doesNotHaveDuplicates();
    }
}
