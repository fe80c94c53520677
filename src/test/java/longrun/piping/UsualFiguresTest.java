package longrun.piping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.json.PlanError;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounds of the usual: common practice. */
class UsualFiguresTest {

    private static String plan(String entries) {
        return "{\"format\":\"longrun-plan/1\"," + entries + "}";
    }

    private static List<Finding> asked(String entries) {
        return UsualFigures.of(PlanReader.read(plan(entries)).plan().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'site':{'people':20} | 0",
                "'site':{'people':21} | 1",
                "'site':{'people':1} | 0",
                "'site':{'people':0} | 1",
                "'site':{'leadDays':30} | 0",
                "'site':{'leadDays':31} | 1",
                "'tank':{'count':6} | 0",
                "'tank':{'count':7} | 1",
                "'tanks':[{'count':1},{'count':9}] | 1",
                "'tank':{'waterCapacity':'2000 gal'} | 0",
                "'tank':{'waterCapacity':'2001 gal'} | 1",
                "'use':{'hotWater':{'dailyVolume':'300 gal'}} | 0",
                "'use':{'hotWater':{'dailyVolume':'301 gal'}} | 1",
                "'use':{'others':[{'volumePerYear':'3000 gal'},{'volumePerYear':'3001 gal'}]} | 1",
                "'use':{'pricePerGal':2.85} | 0",
                "'use':{'pricePerGal':285} | 1"
            })
    void aFigureOutsideTheUsualIsAskedAgain(String entries, int questions) {
        assertThat(asked(entries.replace('\'', '"'))).hasSize(questions);
    }

    @Test
    void itIsAQuestionAtItsFieldAndNeverMore() {
        Finding f = asked("\"site\":{\"people\":999}").get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.field()).isEqualTo("/site/people");
        assertThat(f.ask().orElseThrow()).contains("999 people in the house", "1 to 20");
        assertThat(asked("\"tanks\":[{\"count\":1},{\"count\":9}]").get(0).field())
                .isEqualTo("/tanks/1/count");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'tank':{'waterCapacity':'2001 gal'} | 2,001 gal of water capacity | up to 2,000 gal",
                "'site':{'leadDays':31} | 31 days from call to truck | up to 30",
                "'use':{'pricePerKwh':12.5} | 12.5 as the price of a kilowatt-hour | 0.02 to 2"
            })
    void theQuestionTellsFigureUnitAndTheUsual(String entries, String figure, String usual) {
        assertThat(asked(entries.replace('\'', '"')))
                .singleElement()
                .satisfies(f -> assertThat(f.ask().orElseThrow()).contains(figure, usual));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'site':{'people':9999999} | /site/people",
                "'site':{'leadDays':367} | /site/leadDays",
                "'tank':{'count':1001} | /tank/count",
                "'tanks':[{},{'count':1001}] | /tanks/1/count",
                "'use':{'others':[{'hoursPerDay':25}]} | /use/others/0/hoursPerDay",
                "'use':{'pricePerGal':1000001} | /use/pricePerGal"
            })
    void whatNoHouseCanHaveIsRefusedWithWhatToWrite(String entries, String pointer) {
        List<PlanError> errors =
                PlanReader.read(plan(entries.replace('\'', '"'))).errors();
        assertThat(errors).extracting(PlanError::pointer).containsExactly(pointer);
        assertThat(errors.get(0).message()).contains("write up to");
    }
}
