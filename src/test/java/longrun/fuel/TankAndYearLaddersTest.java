package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import longrun.PlanCount;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.tank.Demand;
import longrun.tank.RandomTanks;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/**
 * One thing made worse at a time, on seeded random houses: colder, emptier, larger, less known. The tank never gives more for
 * it, never carries what it did not carry, and no smaller tank is named.
 */
class TankAndYearLaddersTest {

    private static final int PLANS = PlanCount.LADDER.plans();
    private static final long FIRST_SEED = 61_000_000;

    /** What is no fact about the house, or no longer the same question once it is gone. */
    private static final List<String> NO_FACTS = List.of("format", "id", "kind", "appliances");

    private interface Worse {
        void check(String as, House before, House after);
    }

    private record House(Plan plan, TankReport tank, FuelReport year) {

        static House of(JsonNode document, String as) {
            Plan plan = PlanReader.read(document).plan().orElseThrow(() -> new AssertionError(as));
            TankReport tank = TankStudy.of(plan);
            return new House(plan, tank, FuelYear.of(plan, tank));
        }
    }

    /** In a build every house climbs one of the five ladders, in the long run each climbs all. */
    private static void eachHouse(int ladder, BiConsumer<ObjectNode, Random> worse, Worse check) {
        boolean all = PLANS > 3_000;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            if (!all && seed % 5 != ladder) {
                continue;
            }
            ObjectNode document = RandomTanks.plan(seed);
            ObjectNode after = document.deepCopy();
            worse.accept(after, new Random(seed));
            String as = "seed " + seed + " " + after + " after " + document;
            check.check(as, House.of(document, as), House.of(after, as));
        }
    }

    @Test
    void colderNeverGivesMoreVapourNorCarriesMoreNorNeedsASmallerTank() {
        eachHouse(
                0,
                (plan, random) -> add(plan.at("/site"), "winterDesignTemp", -1 - random.nextInt(30)),
                (as, before, after) -> {
                    noMore(
                            after.tank().capacityAtDesignBtuh().value(),
                            before.tank().capacityAtDesignBtuh().value(),
                            as);
                    noMore(
                            after.tank().plannedBtuh().value(),
                            before.tank().plannedBtuh().value(),
                            as);
                    carriesNoMore(as, before, after);
                    noSmallerTank(as, before, after);
                });
    }

    @Test
    void aColderYearBurnsNoLess() {
        eachHouse(
                1,
                (plan, random) -> {
                    ArrayNode means = (ArrayNode) plan.at("/site/monthlyMeanTemp");
                    int less = 1 + random.nextInt(15);
                    for (int m = 0; m < 12; m++) {
                        means.set(m, number(means.path(m)) - less + " degF");
                    }
                },
                (as, before, after) -> noMore(
                        before.year().annualGal().value(),
                        after.year().annualGal().value(),
                        as));
    }

    @Test
    void emptierNeverGivesMoreVapourNorLastsLonger() {
        eachHouse(
                2,
                (plan, random) -> {
                    int gauge = (int) number(plan.at("/tank/gauge"));
                    add(plan.at("/tank"), "gauge", -1 - random.nextInt(gauge - 1));
                    int refill = (int) number(plan.at("/tank/refillAt"));
                    add(plan.at("/tank"), "refillAt", -1 - random.nextInt(refill - 1));
                },
                (as, before, after) -> {
                    noMore(
                            after.tank().capacityAtDesignBtuh().value(),
                            before.tank().capacityAtDesignBtuh().value(),
                            as);
                    noMore(
                            after.tank().plannedBtuh().value(),
                            before.tank().plannedBtuh().value(),
                            as);
                    noMore(after.tank().nowGal().value(), before.tank().nowGal().value(), as);
                    carriesNoMore(as, before, after);
                    noSmallerTank(as, before, after);
                });
    }

    @Test
    void aLargerApplianceNeverCarriesMoreNorNeedsASmallerTank() {
        eachHouse(
                3,
                (plan, random) -> {
                    JsonNode all = plan.at("/appliances");
                    add(all.path(random.nextInt(all.size())), "input", 1000 * (1 + random.nextInt(80)));
                },
                (as, before, after) -> {
                    carriesNoMore(as, before, after);
                    noSmallerTank(as, before, after);
                    noMore(
                            before.year().annualGal().value(),
                            after.year().annualGal().value(),
                            as);
                });
    }

    /**
     * What is not known is not carried. A month list and a share of full fire mean all months and full fire where they are
     * absent, which a plan's format fixes; the heat in a gallon and the balance point have a starting value that is told.
     */
    @Test
    void aFactRemovedNeverCarriesWhatWasNotCarriedNorKnowsWhatWasNotKnown() {
        Map<String, Integer> removed = new TreeMap<>();
        eachHouse(
                4,
                (plan, random) -> {
                    List<JsonPointer> facts = new ArrayList<>();
                    collect(plan, JsonPointer.empty(), facts);
                    JsonPointer fact = facts.get(random.nextInt(facts.size()));
                    ((ObjectNode) plan.at(fact.head())).remove(fact.last().getMatchingProperty());
                    removed.merge(fact.last().getMatchingProperty(), 1, Integer::sum);
                },
                (as, before, after) -> {
                    carriesNoMore(as, before, after);
                    if (!before.year().annualGal().isKnown()) {
                        assertThat(after.year().annualGal().isKnown()).as(as).isFalse();
                    }
                });
        assertThat(removed).hasSizeGreaterThan(15);
    }

    private static void collect(JsonNode node, JsonPointer at, List<JsonPointer> out) {
        node.properties().forEach(e -> {
            JsonPointer here = at.appendProperty(e.getKey());
            if (!NO_FACTS.contains(e.getKey())) {
                out.add(here);
            }
            collect(e.getValue(), here, out);
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), at.appendIndex(i), out);
        }
    }

    private static void carriesNoMore(String as, House before, House after) {
        for (int d = 0;
                d
                        < Math.min(
                                before.tank().demands().size(),
                                after.tank().demands().size());
                d++) {
            Demand was = before.tank().demands().get(d);
            Demand is = after.tank().demands().get(d);
            assertThat(rank(is)).as("%s: %s", was.name(), as).isGreaterThanOrEqualTo(rank(was));
        }
    }

    private static int rank(Demand d) {
        return switch (d.status()) {
            case CARRIES -> 0;
            case DOUBTFUL -> 1;
            case UNKNOWN -> 1;
            case SHORT -> 1;
        };
    }

    private static void noSmallerTank(String as, House before, House after) {
        for (int c = 0; c < before.tank().smallest().size(); c++) {
            double was = gallons(before, c);
            assertThat(gallons(after, c)).as(as).isGreaterThanOrEqualTo(was);
        }
    }

    /** Water gallons of the smallest tank; without end where none is large enough. */
    private static double gallons(House house, int choice) {
        return house.tank().smallest().get(choice).size().map(s -> s.waterGal()).orElse(Double.POSITIVE_INFINITY);
    }

    private static void noMore(OptionalDouble less, OptionalDouble more, String as) {
        double slack = 1e-9 * Math.abs(more.orElseThrow());
        assertThat(less.orElseThrow()).as(as).isLessThanOrEqualTo(more.orElseThrow() + slack);
    }

    private static double number(JsonNode node) {
        return Double.parseDouble(node.asText().replaceAll(" .*", ""));
    }

    private static void add(JsonNode holder, String entry, int more) {
        String written = holder.path(entry).asText();
        String unit = written.substring(written.indexOf(' '));
        ((ObjectNode) holder).put(entry, (int) number(holder.path(entry)) + more + unit);
    }
}
