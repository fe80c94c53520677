package longrun.holdpoint;

import java.util.List;
import longrun.finding.Finding;
import longrun.finding.RuleName;
import longrun.plan.choice.Named;

/**
 * The points in their order. Each names who looks, what is looked at, and which findings stand before it; the order is
 * common practice, what each asks is the code's.
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
            "Every outlet that feeds nothing yet is closed with a cap or a plug, a valve alone is not enough.",
            List.of("outlet-uncapped")),
    TEST(
            "Pressure test",
            "the fitter, with the inspector",
            "The pipe is as planned, its joints still to be seen, and each side has held its test.",
            List.of()),
    REGULATORS(
            "Regulators and vents",
            "the fitter",
            "Each regulator is the kind, set and turned as planned; its vent is open, looks down and is clear of snow.",
            List.of("regulator-", "line-regulator-", "pressure-indoors", "appliance-line-pressure", "shutoff-main")),
    CONNECTORS(
            "Shutoffs, traps and connectors",
            "the fitter",
            "At each appliance the gas meets shutoff, sediment trap and connector in that order, each to be reached.",
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
            "Carbon monoxide alarms are up where the code and their maker say, and tested; a propane detector low, near"
                    + " the floor, is advised.",
            List.of()),
    LEAK_CHECK(
            "The supplier's leak check",
            "the supplier",
            "Tank, distances and fittings are looked at, and the supplier has made the leak check that comes before the"
                    + " tank valve is opened for use.",
            List.of("tank-")),
    PURGE(
            "Purge",
            "the fitter or the supplier",
            "The air is let out where the purge plan says, attended, with no flame or spark near.",
            List.of()),
    PRESSURES(
            "Pressures measured",
            "the fitter or the supplier",
            "With nothing firing and with everything firing each regulator and each burner stands where it should.",
            List.of("inlet-pressure-")),
    RELIGHT(
            "Lighting",
            "the fitter or the supplier",
            "Each appliance is lit by its maker's instructions and watched through a full run; hot water is measured at"
                    + " a tap.",
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

    public String title() {
        return title;
    }

    /** Who looks. */
    public String who() {
        return who;
    }

    /** What is looked at, in a sentence. */
    public String look() {
        return look;
    }

    /** The point a finding stands before; what no other point asks for stands before the test of the pipe. */
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

    /** A missing entry stands before the point that rests on it. */
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
