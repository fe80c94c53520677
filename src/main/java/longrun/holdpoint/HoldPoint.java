package longrun.holdpoint;

import java.util.List;
import longrun.finding.Finding;
import longrun.finding.RuleName;
import longrun.plan.choice.Named;

/**
 * The hold points in order. Each says who checks, what is checked and which findings must be settled first. The order is
 * common practice; what each point requires is from the code.
 */
public enum HoldPoint implements Named {
    GAS_TYPE(
            "Gas type",
            "the fitter",
            "Every rating plate says propane, or the maker's conversion is done and its sticker is on.",
            List.of("gas-type", "altitude")),
    CAPS(
            "Caps",
            "the fitter",
            "Every outlet that feeds nothing yet is closed with a cap or a plug; a valve alone is not enough.",
            List.of("outlet-uncapped")),
    TEST(
            "Pressure test",
            "the fitter, with the inspector",
            "The pipe is as planned, its joints are still exposed, and each side has held its test.",
            List.of()),
    REGULATORS(
            "Regulators and vents",
            "the fitter",
            "Each regulator is of the planned kind, set as planned and fitted the planned way round; its vent is open, faces down and is clear of snow.",
            List.of("regulator-", "line-regulator-", "pressure-indoors", "appliance-line-pressure", "shutoff-main")),
    CONNECTORS(
            "Shutoffs, traps and connectors",
            "the fitter",
            "At each appliance the gas passes the shutoff, the sediment trap and the connector in that order, and each can be reached.",
            List.of("shutoff-", "trap-", "connector-", "union-")),
    AIR(
            "Air for combustion",
            "the fitter",
            "Each burner has the air it needs, and its openings are open.",
            List.of("air-for-combustion", "appliance-below-grade", "appliance-bedroom", "appliance-garage")),
    VENT(
            "Flues and drains",
            "the fitter",
            "Each flue is whole and ends clear of windows, doors, intakes and snow; condensate drains and cannot"
                    + " freeze.",
            List.of("vent-terminal", "condensate", "freeze-power")),
    ALARMS(
            "Alarms",
            "the owner",
            "Carbon monoxide alarms are fitted where the code and their maker say, and have been tested; a propane"
                    + " detector low on the wall, near the floor, is advised.",
            List.of()),
    LEAK_CHECK(
            "The supplier's leak check",
            "the supplier",
            "The tank, its distances and its fittings have been checked, and the supplier has made the leak check that"
                    + " comes before the tank valve is opened for use.",
            List.of("tank-")),
    PURGE(
            "Purge",
            "the fitter or the supplier",
            "The air is let out where the purge plan says, with somebody present and no flame or spark near.",
            List.of()),
    PRESSURES(
            "Pressures measured",
            "the fitter or the supplier",
            "With nothing firing and with everything firing, the pressure at each regulator and each burner is as predicted.",
            List.of("inlet-pressure-")),
    RELIGHT(
            "Lighting",
            "the fitter or the supplier",
            "Each appliance is lit by its maker's instructions and watched through a full cycle; the temperature of"
                    + " hot water is measured at a tap.",
            List.of(
                    "storage-lukewarm",
                    "mixing-valve-last",
                    "preheated-inlet",
                    "scald-limit",
                    "relief-valve-cut-off",
                    "expansion-tank"));

    private final String title;
    private final String who;
    private final String look;
    private final List<String> rules;

    HoldPoint(String title, String who, String look, List<String> rules) {
        this.title = title;
        this.who = who;
        this.look = look;
        this.rules = rules;
    }

    /** The point's title. */
    public String title() {
        return title;
    }

    /** Who checks. */
    public String who() {
        return who;
    }

    /** What is checked, in a sentence. */
    public String look() {
        return look;
    }

    /** The point before which a finding must be settled; one that belongs to no other point belongs to the pressure test. */
    public static HoldPoint of(Finding finding) {
        if (finding.name().equals(RuleName.ENTRY_MISSING)) {
            return byEntry(finding.field());
        }
        for (HoldPoint p : values()) {
            if (p.rules.stream().anyMatch(finding.rule()::startsWith)) {
                return p;
            }
        }
        return TEST;
    }

    /** A missing entry belongs to the point that depends on it. */
    private static HoldPoint byEntry(String field) {
        if (field.startsWith("/regulators")) {
            return REGULATORS;
        }
        if (field.contains("/connection")) {
            return CONNECTORS;
        }
        if (field.startsWith("/tank")) {
            return LEAK_CHECK;
        }
        return field.startsWith("/use") || field.startsWith("/site") || field.startsWith("/deliveries")
                ? RELIGHT
                : TEST;
    }
}
