package longrun.ui.run;

import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;

/** The run nobody sees is typed into without a browser and without a session. */
class RunRehearsalTest {

    @Test
    void aRunNobodySeesIsSizedWithoutABrowser() {
        assertThatCode(new RunRehearsal(new ReviewSizer())::run).doesNotThrowAnyException();
    }
}
