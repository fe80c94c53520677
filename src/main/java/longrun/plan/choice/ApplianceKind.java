package longrun.plan.choice;

/** What an appliance is. */
public enum ApplianceKind implements Named {
    ON_DEMAND_WATER_HEATER("on-demand water heater"),
    STORAGE_WATER_HEATER("storage water heater"),
    FURNACE("furnace"),
    BOILER("boiler"),
    SPACE_HEATER("space heater"),
    RANGE("range"),
    COOKTOP("cooktop"),
    OVEN("oven"),
    CLOTHES_DRYER("clothes dryer"),
    FIREPLACE("fireplace"),
    GAS_LOGS("gas logs"),
    OUTDOOR_GRILL("outdoor grill"),
    STANDBY_GENERATOR("standby generator"),
    POOL_HEATER("pool heater"),
    LIGHT("gas light"),
    REFRIGERATOR("refrigerator"),
    OTHER("appliance");

    private final String label;

    ApplianceKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /**
     * Whether an appliance of this kind as a rule leads what it burns outdoors by a vent of its own. Ranges, dryers (their
     * exhaust is no vent), refrigerators and lights may stand without one (fuel gas code 501.8, memory); a grill outdoors
     * has none.
     */
    public boolean isUsuallyVented() {
        return switch (this) {
            case RANGE, COOKTOP, OVEN, CLOTHES_DRYER, REFRIGERATOR, LIGHT, OUTDOOR_GRILL -> false;
            default -> true;
        };
    }
}
