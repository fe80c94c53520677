package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** The tanks and cylinders offered. */
public enum TankChoice {
    LB_20(20, true, 12, 18),
    LB_100(100, true, 14.5, 48),
    LB_420(420, true, 30, 53),
    GAL_120(120, false, 66, 24),
    GAL_250(250, false, 92, 30),
    GAL_320(320, false, 114, 30),
    GAL_500(500, false, 118, 37.4),
    GAL_1000(1000, false, 191, 41);

    private static final String WEIGHT = "propaneWeight";
    private static final String CAPACITY = "waterCapacity";

    private final int size;
    private final boolean cylinder;
    private final double wideIn;
    private final double highIn;

    TankChoice(int size, boolean cylinder, double wideIn, double highIn) {
        this.size = size;
        this.cylinder = cylinder;
        this.wideIn = wideIn;
        this.highIn = highIn;
    }

    /** Whether it is a cylinder and not an ASME tank. */
    public boolean isCylinder() {
        return cylinder;
    }

    /** Its width as drawn, inches, from makers' size lists (secondary); the 20 lb cylinder held from memory. */
    public double wideIn() {
        return wideIn;
    }

    /** Its height as drawn, inches; sources as for {@link #wideIn}. */
    public double highIn() {
        return highIn;
    }

    /** Its nominal size as a number, such as "1,000". */
    public String number() {
        return String.format(java.util.Locale.ROOT, "%,d", size);
    }

    /** The unit of its nominal size, gal or lb. */
    public String unit() {
        return cylinder ? "lb" : "gal";
    }

    /** Writes it into the entry of a tank in place of the tank there; count, gauge and dates are kept. */
    public void write(ObjectNode tank) {
        String placement = tank.path("placement").asText("above-ground");
        for (String other : new String[] {WEIGHT, CAPACITY, "orientation", "diameter", "length", "vapourCapacity"}) {
            tank.remove(other);
        }
        tank.put("kind", cylinder ? "cylinder" : "asme");
        tank.put(cylinder ? WEIGHT : CAPACITY, size + " " + unit());
        tank.put("placement", cylinder ? "above-ground" : placement);
        if (!cylinder) {
            tank.put("orientation", "horizontal");
        }
    }

    /** The choice that matches the entry of a tank; empty for any other tank. */
    public static Optional<TankChoice> of(JsonNode tank) {
        for (TankChoice each : values()) {
            String held = tank.path(each.cylinder ? WEIGHT : CAPACITY).asText();
            boolean kind = tank.path("kind").asText().equals(each.cylinder ? "cylinder" : "asme");
            boolean lies = each.cylinder || tank.path("orientation").asText().equals("horizontal");
            if (kind && lies && held.replace(",", "").equals(each.size + " " + each.unit())) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
