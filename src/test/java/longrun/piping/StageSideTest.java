package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import longrun.Samples;
import org.junit.jupiter.api.Test;

/**
 * The point of delivery is the outlet of the last regulator that is not a line regulator (NFPA 54 1.1.1.1(A)): which side of
 * it a stage lies on is told only where the kinds of the regulators tell it.
 */
class StageSideTest {

    private static Piping piping(String first, String second, String third) {
        return Piping.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":["
                + "{\"id\":\"R1\",\"fedBy\":\"tank\"" + first + "},"
                + "{\"id\":\"R2\",\"fedBy\":\"Y\"" + second + "},"
                + "{\"id\":\"R3\",\"fedBy\":\"A\"" + third + "}],"
                + "\"sections\":[{\"id\":\"Y\",\"from\":\"R1\"},{\"id\":\"A\",\"from\":\"R2\"},"
                + "{\"id\":\"B\",\"from\":\"R3\"}]}"));
    }

    private static List<Side> sides(String first, String second, String third) {
        return piping(first, second, third).stages().stream().map(Stage::side).toList();
    }

    private static String kind(String kind) {
        return ",\"kind\":\"" + kind + "\"";
    }

    @Test
    void lineRegulatorsLieBehindThePointOfDelivery() {
        assertThat(sides(kind("first-stage"), kind("two-psi"), kind("line")))
                .containsExactly(Side.TANK_SIDE, Side.HOUSE_SIDE, Side.HOUSE_SIDE);
    }

    @Test
    void stageOfARegulatorOfUnknownKindIsOnNoSide() {
        assertThat(sides(kind("first-stage"), "", kind("line")))
                .containsExactly(Side.UNKNOWN, Side.UNKNOWN, Side.HOUSE_SIDE);
        assertThat(sides("", "", "")).containsOnly(Side.UNKNOWN);
    }

    @Test
    void knownRegulatorFurtherOnTellsTheSideWhateverTheUnknownOneIs() {
        assertThat(sides(kind("first-stage"), kind("second-stage"), ""))
                .containsExactly(Side.TANK_SIDE, Side.UNKNOWN, Side.UNKNOWN);
    }

    private static Optional<String> missing(String section, String first, String second, String third) {
        return piping(first, second, third).network().findKindMissing(section);
    }

    @Test
    void kindThatTellsTheSideIsTheOneAheadAndElseTheNearestAfterIt() {
        assertThat(missing("Y", kind("first-stage"), "", "")).contains("/regulators/1/kind");
        assertThat(missing("Y", kind("first-stage"), kind("line"), "")).contains("/regulators/2/kind");
        assertThat(missing("Y", "", "", "")).contains("/regulators/0/kind");
        assertThat(missing("A", kind("first-stage"), "", kind("line"))).contains("/regulators/1/kind");
        assertThat(missing("A", "", kind("two-psi"), "")).contains("/regulators/2/kind");
    }

    @Test
    void noKindIsMissingWhereAllAreEnteredOrNothingFeedsThePipe() {
        assertThat(missing("Y", kind("first-stage"), kind("two-psi"), kind("line")))
                .isEmpty();
        assertThat(missing("B", "", "", kind("line"))).isEmpty();
        assertThat(missing("no such section", "", "", "")).isEmpty();
        assertThat(Piping.of(
                                Samples.plan(
                                        "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\"}],\"sections\":[{\"id\":\"S\"}]}"))
                        .network()
                        .findKindMissing("S"))
                .isEmpty();
    }

    @Test
    void kindIsMissingWhereverItsRegulatorStandsInTheList() {
        assertThat(Piping.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":["
                                + "{\"id\":\"R2\",\"fedBy\":\"Y\"},"
                                + "{\"id\":\"R1\",\"fedBy\":\"tank\"" + kind("first-stage") + "}],"
                                + "\"sections\":[{\"id\":\"Y\",\"from\":\"R1\"},{\"id\":\"A\",\"from\":\"R2\"}]}"))
                        .network()
                        .findKindMissing("Y"))
                .contains("/regulators/0/kind");
    }
}
