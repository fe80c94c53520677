package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How the pressure is reduced: what a picture fills in, and that pipes already entered stay. */
class PressureReductionTest {

    private static ObjectNode plan(String json) {
        try {
            return (ObjectNode) PlanReader.tree(json.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static ObjectNode empty() {
        return plan("{'format':'longrun-plan/1'}");
    }

    private static ObjectNode withHouse() {
        ObjectNode plan = empty();
        PressureReduction.WALL.into(new DraftEdit(plan));
        plan.withArray("sections").add(plan("{'id':'A','from':'R2','material':'steel','legs':['20 ft']}"));
        plan.withArray("sections").add(plan("{'id':'B','from':'A','material':'steel','legs':['10 ft']}"));
        return plan;
    }

    private static List<String> edges(ObjectNode plan) {
        List<String> out = new ArrayList<>();
        for (JsonNode s : plan.path("sections")) {
            out.add(s.path("from").asText() + ">" + s.path("id").asText());
        }
        for (JsonNode r : plan.path("regulators")) {
            out.add(r.path("fedBy").asText() + ">" + r.path("id").asText());
        }
        return out;
    }

    @ParameterizedTest
    @EnumSource
    void whatAPictureFillsInCanBeReadAndIsThatPicture(PressureReduction cut) {
        ObjectNode plan = empty();
        cut.into(new DraftEdit(plan));
        assertThat(PlanReader.read(plan).errors()).isEmpty();
        assertThat(PressureReduction.of(DraftValue.of(plan))).contains(cut);
    }

    @Test
    void aWallRegulatorIsFedByABuriedLineAtTenPsi() {
        ObjectNode plan = empty();
        PressureReduction.WALL.into(new DraftEdit(plan));
        assertThat(edges(plan)).containsExactly("R1>Y1", "tank>R1", "Y1>R2");
        assertThat(plan.at("/regulators/0/outlet").asText()).isEqualTo("10 psi");
        assertThat(plan.at("/regulators/0/allowedDrop").asText()).isEqualTo("1 psi");
        assertThat(plan.at("/regulators/1/allowedDrop").asText()).isEqualTo("0.5 in w.c.");
    }

    @Test
    void bothStagesAtTheTankLetThePipesGoOnFromTheYardLine() {
        ObjectNode plan = withHouse();
        PressureReduction.TANK.into(new DraftEdit(plan));
        assertThat(edges(plan)).containsExactly("R1>Y1", "Y1>A", "A>B", "tank>R1");
        assertThat(plan.at("/regulators/0/outlet").asText()).isEqualTo("11 in w.c.");
    }

    @Test
    void backToTheWallIsTheHouseAsItWas() {
        ObjectNode plan = withHouse();
        ObjectNode before = plan.deepCopy();
        PressureReduction.TANK.into(new DraftEdit(plan));
        PressureReduction.WALL.into(new DraftEdit(plan));
        assertThat(edges(plan)).isEqualTo(edges(before));
    }

    @Test
    void twoPsiPutsALineRegulatorBeforeThePipesOfTheHouse() {
        ObjectNode plan = withHouse();
        PressureReduction.TWO_PSI.into(new DraftEdit(plan));
        assertThat(edges(plan)).contains("R2>C", "C>R3", "R3>A", "A>B", "Y1>R2");
        assertThat(PlanReader.read(plan).errors()).isEmpty();
    }

    @Test
    void aPressureOfOnesOwnStaysWhenTheSamePictureIsChosenAgain() {
        ObjectNode plan = withHouse();
        ((ObjectNode) plan.at("/regulators/1")).put("outlet", "12 in w.c.");
        PressureReduction.WALL.into(new DraftEdit(plan));
        assertThat(plan.at("/regulators/1/outlet").asText()).isEqualTo("12 in w.c.");
    }

    @Test
    void regulatorsOfAnotherArrangementAreLeftAlone() {
        ObjectNode plan = plan("{'regulators':[{'id':'X','kind':'single-stage'}]}");
        assertThat(PressureReduction.canChoose(DraftValue.of(plan))).isFalse();
    }

    @Test
    void aRunOnTheWallBecomesAHouseWithItsFirstStageAndYardLine() {
        ObjectNode run = plan(
                "{'format':'longrun-plan/1','regulators':[{'id':'R1','kind':'second-stage','outlet':'11 in w.c.','allowedDrop':'0.5 in w.c.'}],"
                        + "'sections':[{'id':'A','from':'R1','material':'steel','legs':['22 ft']}]}");
        ObjectNode house = (ObjectNode) RunToHouse.house(DraftValue.of(run)).node();
        assertThat(edges(house)).containsExactly("R1>Y1", "R2>A", "tank>R1", "Y1>R2");
        assertThat(PressureReduction.of(DraftValue.of(house))).contains(PressureReduction.WALL);
        assertThat(PlanReader.read(house).errors()).isEmpty();
        assertThat(edges(run)).as("the run itself").containsExactly("R1>A", ">R1");
    }

    @Test
    void aTwoPsiRunBecomesAHouseWithThreeRegulators() {
        ObjectNode run = plan(
                "{'format':'longrun-plan/1','regulators':[{'id':'R1','kind':'two-psi','outlet':'2 psi','allowedDrop':'1 psi'},"
                        + "{'id':'R2','kind':'line','outlet':'11 in w.c.','allowedDrop':'0.5 in w.c.','fedBy':'A'}],"
                        + "'sections':[{'id':'A','from':'R1','material':'steel','legs':['22 ft']},{'id':'B','from':'R2','material':'steel','legs':['9 ft']}]}");
        ObjectNode house = (ObjectNode) RunToHouse.house(DraftValue.of(run)).node();
        assertThat(edges(house)).containsExactly("R1>Y1", "R2>A", "R3>B", "tank>R1", "Y1>R2", "A>R3");
        assertThat(PlanReader.read(house).errors()).isEmpty();
    }
}
