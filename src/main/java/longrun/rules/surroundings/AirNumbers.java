package longrun.rules.surroundings;

import java.util.HashMap;
import java.util.Map;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Louvre;

/** The code's numbers for air, read once from {@code data/rules/combustion-air.csv}. */
final class AirNumbers {

    private static final Map<String, Double> ALL = load();

    static final double ROOM_PER_THOUSAND = get("room-per-thousand");
    static final double LEAST_AIR_CHANGE = get("least-air-change");
    static final double GREATEST_AIR_CHANGE = get("greatest-air-change");
    static final double NATURAL = get("natural");
    static final double FAN_ASSISTED = get("fan-assisted");
    static final double INDOOR_PER_THOUSAND = get("indoor-per-thousand");
    static final double INDOOR_LEAST = get("indoor-least");
    static final double OUTDOOR_TWO = get("outdoor-two");
    static final double OUTDOOR_DUCT = get("outdoor-duct");
    static final double OUTDOOR_ONE = get("outdoor-one");

    private AirNumbers() {}

    /** The share of a louvre's area that lets air through. */
    static double free(Louvre louvre) {
        return get(louvre == Louvre.METAL ? "louvre-metal" : "louvre-wood");
    }

    private static double get(String what) {
        Double value = ALL.get(what);
        if (value == null) {
            throw new IllegalStateException("rules/combustion-air.csv has no row " + what);
        }
        return value;
    }

    private static Map<String, Double> load() {
        Map<String, Double> all = new HashMap<>();
        for (DataRow row : DataFile.read("rules/combustion-air.csv").rows()) {
            all.put(row.text("what"), row.positive("value"));
        }
        return Map.copyOf(all);
    }
}
