package longrun.tank;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;

/**
 * Seeded random houses for tank and year: a tank lying above ground, a climate, heating, and other uses. The same seed
 * always gives the same house.
 */
public final class RandomTanks {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int[] CAPACITIES = {120, 250, 320, 500, 1000};

    private final Random random;
    private final ObjectNode plan = JSON.createObjectNode();

    private RandomTanks(long seed) {
        random = new Random(seed);
    }

    /** The house of a seed. */
    public static ObjectNode plan(long seed) {
        return new RandomTanks(seed).make();
    }

    private ObjectNode make() {
        plan.put("format", "longrun-plan/1");
        ObjectNode site = plan.putObject("site");
        site.put("winterDesignTemp", between(-35, 25) + " degF");
        site.put("leadDays", random.nextInt(21));
        ArrayNode means = site.putArray("monthlyMeanTemp");
        double middle = between(25, 70);
        double swing = between(0, 35);
        for (int m = 0; m < 12; m++) {
            double wave = -Math.cos(2 * Math.PI * (m - 0.5) / 12);
            means.add(tenths(middle + swing * wave + between(-3, 3)) + " degF");
        }
        ObjectNode tank = plan.putObject("tank")
                .put("kind", "asme")
                .put("orientation", "horizontal")
                .put("placement", "above-ground")
                .put("waterCapacity", CAPACITIES[random.nextInt(CAPACITIES.length)] + " gal")
                .put("diameter", between(24, 48) + " in")
                .put("length", between(60, 200) + " in")
                .put("refillAt", between(5, 60) + " %")
                .put("gauge", between(10, 80) + " %")
                .put("gaugeDate", "2026-" + two(1 + random.nextInt(12)) + "-" + two(1 + random.nextInt(28)));
        if (random.nextInt(3) == 0) {
            tank.put("count", 1 + random.nextInt(3));
        }
        ObjectNode use = plan.putObject("use");
        if (random.nextInt(4) > 0) {
            use.put("indoorTemp", between(68, 74) + " degF");
        }
        if (random.nextInt(3) == 0) {
            use.put("heatingValue", between(90_000, 92_500) + " Btu/gal");
        }
        ArrayNode appliances = plan.putArray("appliances");
        ArrayNode heating = use.putArray("heating");
        for (int k = 0; k < random.nextInt(3); k++) {
            appliance(appliances, "furnace-" + k, "furnace");
            ObjectNode h = heating.addObject().put("appliance", "furnace-" + k);
            h.put("designLoad", between(8_000, 90_000) + " Btu/h").put("efficiency", between(70, 98) + " %");
            if (random.nextInt(3) > 0) {
                h.put("balanceTemp", between(45, 65) + " degF");
            }
        }
        ArrayNode others = use.putArray("others");
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            appliance(
                    appliances,
                    "other-" + k,
                    List.of("range", "clothes-dryer", "gas-logs").get(random.nextInt(3)));
            ObjectNode o = others.addObject().put("appliance", "other-" + k);
            if (random.nextBoolean()) {
                o.put("volumePerYear", between(3, 300) + " gal");
            } else {
                o.put("hoursPerDay", tenths(between(0, 80) / 10.0));
                if (random.nextBoolean()) {
                    o.put("load", between(10, 100) + " %");
                }
            }
            if (random.nextInt(3) == 0) {
                ArrayNode months = o.putArray("months");
                int first = random.nextInt(12);
                for (int m = 0; m < 1 + random.nextInt(6); m++) {
                    months.add((first + m) % 12 + 1);
                }
            }
        }
        return plan;
    }

    private void appliance(ArrayNode appliances, String id, String kind) {
        appliances.addObject().put("id", id).put("kind", kind).put("input", 1000 * between(5, 150) + " Btu/h");
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private static String two(int n) {
        return n < 10 ? "0" + n : "" + n;
    }

    private static double tenths(double n) {
        return Math.rint(10 * n) / 10;
    }
}
