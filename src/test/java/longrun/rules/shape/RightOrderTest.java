package longrun.rules.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.Samples;
import longrun.plan.choice.PartKind;
import longrun.rules.RuleReport;
import longrun.rules.Rules;
import longrun.rules.limit.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order that is shown beside a wrong one satisfies the text of every code (rule fact ST-10). */
class RightOrderTest {

    private static final Set<String> ORDER =
            Set.of("shutoff-upstream-of-connector", "trap-downstream-of-shutoff", "trap-before-connector");
    private static final long SEED = 20260901L;

    private static List<Optional<PartKind>> row(PartKind... kinds) {
        return Arrays.stream(kinds).map(Optional::of).toList();
    }

    @Test
    void aRightRowStaysAsItIs() {
        assertThat(RightOrder.of(row(PartKind.SHUTOFF, PartKind.SEDIMENT_TRAP, PartKind.FLEXIBLE_CONNECTOR)))
                .containsExactly(0, 1, 2);
    }

    @Test
    void theTrapGoesAfterTheShutoff() {
        assertThat(RightOrder.of(row(PartKind.SEDIMENT_TRAP, PartKind.SHUTOFF, PartKind.FLEXIBLE_CONNECTOR)))
                .containsExactly(1, 0, 2);
    }

    @Test
    void rigidPipeAndPartsNotNamedStayWhereTheyAre() {
        List<Optional<PartKind>> row = new ArrayList<>(row(PartKind.UNION, PartKind.RIGID_PIPE, PartKind.SHUTOFF));
        row.add(Optional.empty());
        assertThat(RightOrder.of(row)).containsExactly(2, 1, 0, 3);
    }

    @Test
    void aNewPartIsPlacedWhereItBelongs() {
        List<Optional<PartKind>> row = row(PartKind.SHUTOFF, PartKind.FLEXIBLE_CONNECTOR);
        assertThat(RightOrder.placeFor(PartKind.SEDIMENT_TRAP, row)).isEqualTo(1);
        assertThat(RightOrder.placeFor(PartKind.SHUTOFF, List.of())).isZero();
        assertThat(RightOrder.placeFor(PartKind.BUILT_IN_TRAP, row)).isEqualTo(2);
        assertThat(RightOrder.placeFor(PartKind.SHUTOFF, row))
                .as("a second shutoff")
                .isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fuel-gas-2018", "nfpa-54-58", "plumbing-code"})
    void anyRowPutRightBreaksNoRuleOfOrderUnderAnyCode(String code) {
        Random random = new Random(SEED);
        for (int i = 0; i < 60; i++) {
            List<PartKind> kinds = new ArrayList<>(List.of(PartKind.values()));
            Collections.shuffle(kinds, random);
            kinds = kinds.subList(0, 1 + random.nextInt(kinds.size()));
            List<Integer> right = RightOrder.of(kinds.stream().map(Optional::of).toList());
            String parts = right.stream()
                    .map(kinds::get)
                    .map(k -> "{\"part\":\"" + k.written() + "\"}")
                    .collect(Collectors.joining(","));
            RuleReport report =
                    Rules.check(House.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"code\":{\"profile\":\"" + code
                            + "\"},\"appliances\":[{\"id\":\"a\"," + "\"kind\":\"furnace\",\"connection\":[" + parts
                            + "]}]}")));
            assertThat(report.states())
                    .as("seed %s, row %s", SEED, parts)
                    .noneMatch(s -> ORDER.contains(s.rule()) && s.state() == State.BROKEN);
        }
    }
}
