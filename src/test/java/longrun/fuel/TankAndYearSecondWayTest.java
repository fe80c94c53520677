package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.tank.Demand;
import longrun.tank.RandomTanks;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/** The program and {@link TankAndYearByHand} agree on seeded random houses, figure by figure. */
class TankAndYearSecondWayTest {

    private static final SecondWay TANK = SecondWay.get("tank");
    private static final SecondWay YEAR = SecondWay.get("year");
    private static final long PLANS = Ran.count("tank");
    private static final long FIRST_SEED = TANK.seed();

    private double worstOfTank;
    private double worstOfYear;

    @Test
    void vapourVolumesAndGallonsOfTheYearAgree() {
        Map<String, Integer> seen = new TreeMap<>();
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            ObjectNode document = RandomTanks.plan(seed);
            String as = "seed " + seed + " " + document;
            Plan plan = PlanReader.read(document).plan().orElseThrow(() -> new AssertionError(as));
            TankAndYearByHand hand = new TankAndYearByHand(document);
            TankReport tank = TankStudy.of(plan);
            near(tank.usableGal().number(), hand.usableGal(), as);
            near(tank.nowGal().number(), hand.nowGal(), as);
            near(tank.refillGal().number(), hand.refillGal(), as);
            near(tank.capacityAtDesignBtuh().number(), hand.mostBtuh(), as);
            near(tank.plannedBtuh().number(), hand.plannedBtuh(), as);
            Demand everything = tank.demands().get(0);
            near(everything.btuh().number(), hand.everythingBtuh(), as);
            Demand.Status status = hand.everythingBtuh() > hand.mostBtuh()
                    ? Demand.Status.SHORT
                    : hand.everythingBtuh() > hand.plannedBtuh() ? Demand.Status.DOUBTFUL : Demand.Status.CARRIES;
            assertThat(everything.status()).as(as).isEqualTo(status);
            seen.merge(status.name(), 1, Integer::sum);
            year(plan, tank, hand, as);
        }
        assertThat(seen).containsOnlyKeys("CARRIES", "DOUBTFUL", "SHORT");
        Ran.told("tank", PLANS, FIRST_SEED, worstOfTank);
        Ran.told("year", PLANS, FIRST_SEED, worstOfYear);
    }

    /**
     * The two forms of the degree days differ by 0.0000071 s N^1.5, less than 0.0063 degF-days a month; the two heaters of a
     * house burn less than 0.8 gallons each on one.
     */
    private void year(Plan plan, TankReport tank, TankAndYearByHand hand, String as) {
        FuelReport year = FuelYear.of(plan, tank);
        double sum = 0;
        int day = 0;
        for (int m = 0; m < 12; m++) {
            double gallons = hand.gallons(m);
            assertThat(year.monthlyGal().get(m)).as(as).isCloseTo(gallons, within(YEAR.within()));
            worstOfYear = Math.max(worstOfYear, Math.abs(year.monthlyGal().get(m) - gallons));
            double ofItsDays = 0;
            for (int d = 0; d < Months.days(m); d++) {
                ofItsDays += year.dailyGal().get(day++);
            }
            assertThat(ofItsDays).as(as).isCloseTo(year.monthlyGal().get(m), within(1e-6));
            sum += year.monthlyGal().get(m);
        }
        assertThat(year.annualGal().number()).as(as).isCloseTo(sum, within(1e-6));
        assertThat(year.nextRefill()).as(as).isEqualTo(hand.refillDay(year.dailyGal()));
    }

    private void near(double ours, double byHand, String as) {
        if (byHand == 0) {
            assertThat(ours).as(as).isZero();
        } else {
            double off = Math.abs(ours / byHand - 1);
            assertThat(off).as(as).isLessThan(TANK.within());
            worstOfTank = Math.max(worstOfTank, off);
        }
    }
}
