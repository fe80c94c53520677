package longrun.piping;

import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.ApplianceVent;

/**
 * Whether an appliance without a built-in trap needs a sediment trap before it: every kind but those that 2018 IFGC
 * 408.4 (NFPA 54 9.6.8) names. The rules judge by it, and the sizing counts by it where a hookup is not entered.
 */
public enum TrapNeed {
    NEEDED,
    EXEMPT,
    /** The kind is not entered. */
    KIND_NOT_KNOWN,
    /** A built-in cooktop or oven is not in the list by name; a range only where the authority agrees. */
    ASK_AUTHORITY,
    /** Gas logs in a vented fireplace are excused, an unvented set is not; which it is is not entered. */
    VENT_NOT_KNOWN;

    /** What the list says of an appliance. */
    public static TrapNeed of(Appliance appliance) {
        return of(appliance.kind(), appliance.vent());
    }

    /** What the list says of a kind, vented as entered. */
    public static TrapNeed of(Fact<ApplianceKind> kind, Fact<ApplianceVent> vent) {
        return kind.fold(known -> of(known, vent), () -> KIND_NOT_KNOWN, () -> KIND_NOT_KNOWN);
    }

    private static TrapNeed of(ApplianceKind kind, Fact<ApplianceVent> vent) {
        return switch (kind) {
            case LIGHT, RANGE, CLOTHES_DRYER, FIREPLACE, OUTDOOR_GRILL -> EXEMPT;
            case GAS_LOGS ->
                vent.isKnown() || vent.isNone()
                        ? vent.is(v -> v != ApplianceVent.NONE) ? EXEMPT : NEEDED
                        : VENT_NOT_KNOWN;
            case COOKTOP, OVEN -> ASK_AUTHORITY;
            case ON_DEMAND_WATER_HEATER,
                    STORAGE_WATER_HEATER,
                    FURNACE,
                    BOILER,
                    SPACE_HEATER,
                    STANDBY_GENERATOR,
                    POOL_HEATER,
                    REFRIGERATOR,
                    OTHER -> NEEDED;
        };
    }
}
