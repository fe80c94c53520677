package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The most a plan may hold in one list, and the most errors told at once: the last that is taken and the first that is not. */
class PlanLimitsTest {

    @ParameterizedTest
    @CsvSource({"sections, 2, 3, 4", "appliances, 3, 2, 4", "rooms, 4, 3, 2"})
    void aListHasUpToItsLimit(String list, int sections, int appliances, int others) throws Exception {
        PlanLimits limits = new PlanLimits(sections, appliances, others, 10);
        int most = limits.entries("/" + list);
        assertThat(most).as(list).isEqualTo(2);
        for (int count : new int[] {most, most + 1}) {
            StringBuilder items = new StringBuilder();
            for (int i = 0; i < count; i++) {
                items.append(i == 0 ? "" : ",")
                        .append("{\"id\":\"")
                        .append(list)
                        .append(i)
                        .append("\"}");
            }
            Reading reading = PlanReader.read(
                    PlanReader.tree("{\"format\":\"longrun-plan/1\",\"" + list + "\":[" + items + "]}"), limits);
            assertThat(reading.errors()).hasSize(count - most);
            assertThat(reading.plan()
                            .map(p -> p.sections().size()
                                    + p.appliances().size()
                                    + p.rooms().size())
                            .orElse(0))
                    .isEqualTo(count == most ? most : 0);
            assertThat(reading.errors()).allSatisfy(e -> {
                assertThat(e.pointer()).isEqualTo("/" + list);
                assertThat(e.message())
                        .isEqualTo((most + 1) + " entries are more than a house has here: write up to " + most);
            });
        }
    }

    @Test
    void tablesOfNamesAndListsOfTextsAreLimitedToo() throws Exception {
        PlanLimits two = new PlanLimits(2, 2, 2, 10);
        assertThat(PlanReader.read(
                                PlanReader.tree(
                                        "{\"format\":\"longrun-plan/1\",\"prices\":{\"steel 1/2\":1,\"steel"
                                                + " 3/4\":1,\"steel 1\":1},\"availableSizes\":{\"steel\":[\"1/2\",\"3/4\",\"1\"]}}"),
                                two)
                        .errors())
                .extracting(PlanError::pointer)
                .contains("/prices", "/availableSizes/steel");
    }

    @Test
    void errorsBeyondTheMostToldAreCounted() throws Exception {
        String sections = "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"from\":\"Z\"},"
                + "{\"id\":\"B\",\"from\":\"Z\"},{\"id\":\"C\",\"from\":\"Z\"}%s]}";
        PlanLimits three = new PlanLimits(9, 9, 9, 3);
        assertThat(PlanReader.read(PlanReader.tree(sections.formatted("")), three)
                        .errors())
                .hasSize(3);
        List<PlanError> more = PlanReader.read(
                        PlanReader.tree(
                                sections.formatted(",{\"id\":\"D\",\"from\":\"Z\"},{\"id\":\"E\",\"from\":\"Z\"}")),
                        three)
                .errors();
        assertThat(more).hasSize(4);
        assertThat(more.get(3).pointer()).isEmpty();
        assertThat(more.get(3).message()).startsWith("there are 2 more errors, too many to list at once");
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1, 1", "1, 0, 1, 1", "1, 1, 0, 1", "1, 1, 1, 0"})
    void aLimitIsOneOrMore(int sections, int appliances, int others, int errors) {
        assertThatThrownBy(() -> new PlanLimits(sections, appliances, others, errors))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new PlanLimits(1, 1, 1, 1).entries("/rooms")).isEqualTo(1);
    }
}
