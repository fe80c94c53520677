package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.plan.json.PlanError;
import longrun.plan.json.PlanReader;
import longrun.quantity.NotAQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NominalSizeTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"1/2", "1/2\"", "1/2 in", "1/2 in.", "1/2 inch", "0.5", ".5", "1/2 nominal", "1/2 NPT", "\u00bd"
            })
    void aSizeAsPeopleWriteIt(String written) {
        assertThat(NominalSize.read(written)).contains(0.5);
        assertThat(NominalSize.typed(written)).isEqualTo("1/2");
    }

    @Test
    void wordsWithInchAreTypedSizes() {
        assertThat(NominalSize.typed("half inch")).isEqualTo("1/2");
        assertThat(NominalSize.typed("Half-inch")).isEqualTo("1/2");
        assertThat(NominalSize.typed("1 1/4")).isEqualTo("1-1/4");
        assertThat(NominalSize.read("1-1/4 in")).contains(1.25);
    }

    @ParameterizedTest
    @ValueSource(strings = {"half", "big", "7", "0.6", "1/2 x", "", "EHD 23"})
    void anyOtherIsRefusedWithTheSizesThatCanBeWritten(String written) {
        assertThat(NominalSize.typed(written)).isEqualTo(written);
        assertThatThrownBy(() -> NominalSize.read(written))
                .isInstanceOf(NotAQuantity.class)
                .hasMessageContaining("write one of 1/4, 3/8, 1/2");
    }

    @Test
    void anOutsideDiameterIsKeptAndNotCompared() {
        assertThat(NominalSize.read("5/8 OD")).isEmpty();
        assertThat(NominalSize.typed("5/8 OD")).isEqualTo("5/8 OD");
    }

    @Test
    void aPlanThatNamesNoSizeAtAPartSaysSo() {
        assertThat(PlanReader.read(
                                "{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"r\",\"connection\":"
                                        + "[{\"part\":\"shutoff\",\"size\":\"half\"},{\"part\":\"shutoff\",\"size\":\"3/4 in\"}]}]}")
                        .errors())
                .extracting(PlanError::pointer)
                .containsExactly("/appliances/0/connection/0/size");
    }

    @Test
    void aSectionOfNoMaterialHasNoSizeThatNoMaterialIsMadeIn() {
        var errors = PlanReader.read(
                        "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"chosenSize\":\"half\"},"
                                + "{\"id\":\"B\",\"installedSize\":\"3/4\"},{\"id\":\"C\",\"installedSize\":\"1/2 nominal\"}]}")
                .errors();
        assertThat(errors).extracting(PlanError::pointer).containsExactly("/sections/0/chosenSize");
        assertThat(errors.get(0).message()).contains("material").contains("1/2");
    }
}
