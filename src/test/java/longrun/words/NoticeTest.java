package longrun.words;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import org.junit.jupiter.api.Test;

/** Notice that are no rules stand once, and only where a house has what they are about. */
class NoticeTest {

    @Test
    void aHouseWithoutTubingHearsNothingOfItsJacket() {
        assertThat(Notice.of(Samples.plan("{\"format\":\"longrun-plan/1\"}"))).isEmpty();
        assertThat(Notice.of(Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"material\":\"steel\"}]}")))
                .isEmpty();
        assertThat(Notice.of(Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"material\":\"csst\"}]}")))
                .extracting(Notice::place)
                .containsExactly("route");
    }

    @Test
    void theSmellOfANewTankStandsAtTheTankAndSnowAtTheRegulators() {
        assertThat(Notice.of(Samples.sample())).extracting(Notice::place).contains("tank", "connections");
        assertThat(Notice.of(Samples.sample())).doesNotHaveDuplicates();
    }
}
