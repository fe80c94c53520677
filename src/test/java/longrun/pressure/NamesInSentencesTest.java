package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.Samples;
import longrun.piping.Piping;
import org.junit.jupiter.api.Test;

/** In a sentence an appliance goes by its kind or name, and a regulator by what it is called in the plan. */
class NamesInSentencesTest {

    private static final Piping PIPING =
            Piping.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\"}],\"appliances\":["
                    + "{\"id\":\"a\",\"kind\":\"furnace\"},{\"id\":\"b\",\"kind\":\"range\"}]}"));

    @Test
    void eachApplianceIsNamedByItself() {
        assertThat(Words.called(PIPING, "a")).isEqualTo("the furnace");
        assertThat(Words.called(PIPING, "b")).isEqualTo("the range");
    }

    @Test
    void whatIsNoApplianceIsARegulator() {
        assertThat(Words.called(PIPING, "R1")).isEqualTo("regulator R1");
    }
}
