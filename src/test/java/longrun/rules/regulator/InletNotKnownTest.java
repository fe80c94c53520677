package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import longrun.rules.Edits;
import longrun.rules.shape.Question;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why the inlet pressure of a regulator on a pipe is not known: the first entry that lacks on the way from the tank. */
class InletNotKnownTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/sections/0/from gone | of section Y1 ahead of it what it leaves is not entered | /sections/0/from",
                "/sections/0/from gone & /sections/11 insert {\"id\":\"Z\",\"from\":\"Y1\"} & /regulators/1/fedBy = \"Z\""
                        + " | of section Y1 ahead of it what it leaves is not entered | /sections/0/from",
                "/regulators/0/outlet gone | what R1 is set to is not entered | /regulators/0/outlet",
                "/regulators/0/allowedDrop gone | the pressure drop the pipe after R1 is allowed is not entered"
                        + " | /regulators/0/allowedDrop",
                "/sections/1/material gone | of section Y2 ahead of it its material is not entered | /sections/1/material",
                "/sections/1/legs gone | of section Y2 ahead of it its length is not entered | /sections/1/legs",
                "/sections/1/assumed = true | section Y2 ahead of it is assumed, not seen | /sections/1/assumed",
                "/appliances/3/input gone | not everything that R1 feeds is entered | /appliances/3/input",
                "/regulators/3/fedBy gone & /sections/7/capped = true & /sections/7/reserve = \"none\""
                        + " | not everything that R1 feeds is entered | /regulators/3/fedBy",
                "/sections/0/legs = [\"90000 ft\"]"
                        + " | of section Y1 ahead of it a size that carries its load is not entered"
                        + " | /sections/0/installedSize"
            })
    void inletIsNotKnownForTheFirstEntryThatLacks(String edit, String words, String field) {
        assertThat(InletNotKnown.find(Edits.house("whole-house.json", edit), 1))
                .get()
                .extracting(InletNotKnown::words, InletNotKnown::field)
                .containsExactly(words, field);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | ''",
                "1 | ''",
                "2 | ''",
                "3 | ''",
                "1 | /regulators/1/outlet gone",
                "0 | /regulators/0/outlet gone"
            })
    void inletIsKnownAtTheTankAndBehindAPipeThatIsWhollyEntered(int regulator, String edit) {
        assertThat(InletNotKnown.find(Edits.house("whole-house.json", edit), regulator))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/regulators/1/fedBy gone & /sections/0/capped = true | Which pipe or tank feeds {who}?",
                "/sections/0/from gone | What is to be entered for section Y1, ahead of {who}: what it leaves?",
                "/sections/1/assumed = true | Is section Y2, ahead of {who}, as entered?"
            })
    void questionNamesTheEntryThatLacks(String edit, String question) {
        assertThat(InletNotKnown.find(Edits.house("whole-house.json", edit), 1)
                        .map(InletNotKnown::question)
                        .map(Question::text))
                .contains(question);
    }
}
