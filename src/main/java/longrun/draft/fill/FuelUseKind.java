package longrun.draft.fill;

import java.util.Locale;

/** The kind of an appliance by the name a person gives it, as a plan writes it. */
public final class FuelUseKind {

    private static final String[][] WORDS = {
        {"on-demand|tankless|instant", "on-demand-water-heater"},
        {"water heater|hot water|water tank", "storage-water-heater"},
        {"furnace", "furnace"},
        {"boiler", "boiler"},
        {"pool|spa|hot tub", "pool-heater"},
        {"heater|stove heat", "space-heater"},
        {"cooktop|cook top|hob", "cooktop"},
        {"oven", "oven"},
        {"range|stove|cooker|kitchen", "range"},
        {"dryer", "clothes-dryer"},
        {"log", "gas-logs"},
        {"fire", "fireplace"},
        {"grill|barbecue|bbq", "outdoor-grill"},
        {"generator", "standby-generator"},
        {"light|lamp", "light"},
        {"fridge|refrigerator", "refrigerator"}
    };

    private FuelUseKind() {}

    /** The kind by a name; "other" where the name tells none. */
    public static String of(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        for (String[] each : WORDS) {
            if (lower.matches(".*(" + each[0] + ").*")) {
                return each[1];
            }
        }
        return "other";
    }

    /** Whether an appliance of a kind heats the house. */
    public static boolean heatsTheHouse(String kind) {
        return kind.equals("furnace") || kind.equals("boiler") || kind.equals("space-heater");
    }
}
