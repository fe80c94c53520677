package longrun.rules.shutoff;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.rules.shape.Precedence;
import org.junit.jupiter.api.Test;

/** The building has a main shutoff outdoors (2018 IFGC 409.3). */
class MainShutoffTest {

    @Test
    void mainShutoffThatIsMissingIsToldFirst() {
        assertThat(new MainShutoffRule().precedence()).isEqualTo(Precedence.MISSING);
    }
}
