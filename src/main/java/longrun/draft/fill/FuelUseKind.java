package longrun.draft.fill;

import java.util.Locale;

/** What an appliance is by the name a person gives it, for the questions a kind asks and for the house it may become. */
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

    public static String of(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        for (String[] each : WORDS) {
            if (lower.matches(".*(" + each[0] + ").*")) {
                return each[1];
            }
        }
        return "other";
    }

    public static boolean heatsTheHouse(String kind) {
        return kind.equals("furnace") || kind.equals("boiler") || kind.equals("space-heater");
    }
}
