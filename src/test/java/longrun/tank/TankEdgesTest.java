package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.origin.Missing;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.plan.json.PlanError;
import longrun.plan.json.PlanReader;
import org.junit.jupiter.api.Test;

/** A tank's entries at the edge of what they can mean: nothing, all day, no difference, two of them. */
class TankEdgesTest {

    private static TankReport changed(String piece, String other) {
        return TankStudy.of(Houses.orchard(piece, other));
    }

    @Test
    void anOccasionInWhichNothingIsSaidToFireIsUnknownAndNotNothing() {
        Demand evening = changed("\"firing\": [\"heater\", \"range\"]", "\"firing\": []")
                .demands()
                .get(1);
        assertThat(evening.btuh().isKnown()).isFalse();
        assertThat(evening.status()).isEqualTo(Demand.Status.UNKNOWN);
        assertThat(evening.btuh().missing()).extracting(Missing::field).containsExactly("/use/occasions/0/firing");
    }

    @Test
    void aHouseNoWarmerThanTheColdestDayHasNoLossThatCanBeReckoned() {
        for (List<String> edge : List.of(
                List.of("\"indoorTemp\": \"68 degF\"", "\"indoorTemp\": \"8 degF\""),
                List.of("\"efficiency\": \"95 %\"", "\"efficiency\": \"0 %\""))) {
            SpaceHeating h =
                    SpaceHeating.of(Houses.orchard(edge.get(0), edge.get(1))).get(0);
            assertThat(h.gasPerDegF().isKnown()).as(edge.toString()).isFalse();
            assertThat(h.gasPerDegF().missing())
                    .singleElement()
                    .satisfies(m -> assertThat(m.field()).endsWith("/efficiency"));
        }
        SpaceHeating cold = SpaceHeating.of(Houses.orchard("\"indoorTemp\": \"68 degF\"", "\"indoorTemp\": \"8 degF\""))
                .get(0);
        assertThat(cold.lossPerDegF().isKnown()).isFalse();
        // what is not entered is asked for by its own name
        assertThat(SpaceHeating.of(Houses.orchard("\"designLoad\": \"38000 Btu/h\", ", ""))
                        .get(0)
                        .gasPerDegF()
                        .missing())
                .extracting(Missing::field)
                .anyMatch(f -> f.endsWith("/designLoad"));
    }

    /** 65,000 Btu/h of 91,502 Btu/gal. */
    @Test
    void aUseMayLastNoHourOrAllDayAndNoLonger() {
        assertThat(range("0")).isEqualTo(0);
        assertThat(range("24")).isCloseTo(24 * 65_000 / 91_502.0, within(1e-9));
        String longer = Houses.ORCHARD.replace("\"volumePerYear\": \"35 gal\"", "\"hoursPerDay\": 24.1");
        assertThat(PlanReader.read(longer).errors())
                .extracting(PlanError::message)
                .containsExactly("24.1 is more than can be: write up to 24 hours in a day, or look for a key too many");
    }

    private static Plan hours(String hours) {
        return Houses.orchard("\"volumePerYear\": \"35 gal\"", "\"hoursPerDay\": " + hours);
    }

    private static double range(String hours) {
        return OtherUse.of(hours(hours), 91_502).get(0).gallonsPerDay().get(0);
    }

    @Test
    void aUseThatNamesNoApplianceIsCalledByItsNumber() {
        assertThat(OtherUse.of(Houses.orchard("\"appliance\": \"range\", \"volume", "\"volume"), 91_502))
                .extracting(OtherUse::key)
                .containsExactly("other-1");
    }

    @Test
    void ofSeveralTanksEachIsAskedForAtItsOwnPlace() {
        String open = "{ \"kind\": \"asme\", \"waterCapacity\": \"500 gal\" }";
        for (List<String> list : List.of(List.of("tank", "/tank/1/"), List.of("tanks", "/tanks/1/"))) {
            Plan plan =
                    Samples.plan("{\"format\":\"longrun-plan/1\",\"" + list.get(0) + "\":[" + open + "," + open + "]}");
            assertThat(TankStudy.of(plan).usableGal().missing())
                    .extracting(Missing::field)
                    .anyMatch(f -> f.startsWith(list.get(1)));
        }
    }

    @Test
    void theMinutesOfEachDemandSayWhereTheyAreFrom() {
        assertThat(TankStudy.of(Houses.orchard()).origins())
                .extracting(Origin::figure)
                .contains("minutes it can be held");
    }

    @Test
    void hotWaterWithAStorageHeaterIsTakenAsMadeWithoutIt() {
        assertThat(DesignDay.takes(Samples.sample()))
                .anyMatch(t -> t.startsWith("hot water is taken as made without the storage heater"));
        assertThat(DesignDay.takes(Houses.orchard())).noneMatch(t -> t.startsWith("hot water"));
    }

    private static List<Finding> findings(String json) {
        Plan plan = Samples.plan(json);
        return TankFindings.of(plan, TankStudy.of(plan));
    }

    @Test
    void anUprightTankInTheAirIsNotSpokenOfAsBuried() {
        String upright = Houses.ORCHARD
                .replace("\"horizontal\"", "\"vertical\"")
                .replace("500 gal", "120 gal")
                .replace("199000", "20000")
                .replace("60000", "20000")
                .replace("65000", "5000");
        assertThat(TankStudy.of(Samples.plan(upright)).derived()).isTrue();
        assertThat(findings(upright)).noneMatch(f -> f.found().contains("buried"));
    }

    @Test
    void aBuriedTankThatIsEnoughStillLeavesTheMeanToBeAsked() {
        String buried = Houses.ORCHARD
                .replace("above-ground", "underground")
                .replace("199000", "20000")
                .replace("60000", "20000")
                .replace("65000", "5000")
                .replace("\"designLoad\": \"38000 Btu/h\", ", "");
        assertThat(findings(buried))
                .extracting(Finding::rule)
                .containsExactlyInAnyOrder("tank-vapour-mean", "tank-vapour-peak");
    }
}
