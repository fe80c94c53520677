package longrun.ui.fill;

import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;

/** The page nobody sees is typed into without a browser and without a session. */
class FillRehearsalTest {

    @Test
    void aFillNobodySeesIsReckonedWithoutABrowser() {
        assertThatCode(new FillRehearsal(new FillReviewer())::run).doesNotThrowAnyException();
    }
}
