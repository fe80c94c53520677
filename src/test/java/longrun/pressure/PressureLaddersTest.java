package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Random;
import java.util.function.BiConsumer;
import longrun.PlanCount;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/**
 * With the pipe as it lies, one thing made worse at a time on seeded random houses: a longer leg, a larger input.
 * No burner gets more pressure for it, and none is reached that was not.
 */
class PressureLaddersTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PLANS = PlanCount.LADDER.plans();

    private record House(Sizing sizing, Pressures pressures) {

        static House of(JsonNode document) {
            Sizing sizing = Sizing.of(Piping.of(Samples.plan(document.toString())), CapacityTables.standard());
            return new House(sizing, Pressures.of(sizing));
        }
    }

    /** The sizes the house needs, entered as installed: a longer run then asks for no larger pipe. */
    private static ObjectNode installed(String json) throws Exception {
        ObjectNode plan = (ObjectNode) JSON.readTree(json);
        Sizing sizing = House.of(plan).sizing();
        for (int i = 0; i < plan.path("sections").size(); i++) {
            ObjectNode section = (ObjectNode) plan.path("sections").path(i);
            String named = section.path("material").asText().equals("copper") ? " nominal" : "";
            sizing.section(i).neededSize().ifPresent(size -> section.put("installedSize", size + named));
        }
        return plan;
    }

    /** In a build every house climbs one of the ladders, in the long run each climbs both. */
    private static void eachHouse(int ladder, BiConsumer<ObjectNode, Random> worse) throws Exception {
        boolean all = PLANS > 3_000;
        int looked = 0;
        for (long seed = 1; seed <= PLANS; seed++) {
            if (!all && seed % 2 != ladder) {
                continue;
            }
            ObjectNode plan = installed(new RandomHouses(seed, false, SecondWayTest.allowance(seed)).json);
            ObjectNode after = plan.deepCopy();
            worse.accept(after, new Random(seed));
            String as = "seed " + seed + " " + after;
            House was = House.of(plan);
            House is = House.of(after);
            for (int a = 0; a < plan.path("appliances").size(); a++) {
                OutletPressure before = was.pressures().outlet(a);
                OutletPressure now = is.pressures().outlet(a);
                if (now.pressureDrooped().isPresent()) {
                    assertThat(now.pressureDrooped().orElseThrow().inWc())
                            .as(as)
                            .isLessThanOrEqualTo(
                                    before.pressureDrooped().orElseThrow().inWc() + 1e-9);
                    looked++;
                }
                if (before.status() != InletStatus.ENOUGH) {
                    assertThat(now.status()).as(as).isNotEqualTo(InletStatus.ENOUGH);
                }
            }
        }
        assertThat(looked).isGreaterThan(PLANS);
    }

    @Test
    void aLongerLegNeverBringsMorePressureToABurner() throws Exception {
        eachHouse(0, (plan, random) -> {
            JsonNode sections = plan.path("sections");
            ArrayNode legs =
                    (ArrayNode) sections.path(random.nextInt(sections.size())).path("legs");
            int leg = random.nextInt(legs.size());
            String[] words = legs.path(leg).asText().split(" ");
            int feet = Integer.parseInt(words[words.length - 2]);
            String way = words.length > 2 ? words[0] + " " : "";
            legs.set(leg, way + (feet + 1 + random.nextInt(40)) + " ft");
        });
    }

    @Test
    void aLargerInputNeverBringsMorePressureToABurner() throws Exception {
        eachHouse(1, (plan, random) -> {
            JsonNode all = plan.path("appliances");
            ObjectNode one = (ObjectNode) all.path(random.nextInt(all.size()));
            int input = Integer.parseInt(one.path("input").asText().split(" ")[0]);
            one.put("input", input + 1000 * (1 + random.nextInt(30)) + " Btu/h");
        });
    }
}
