package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.pressure.RegulatorPressure.Reached;
import longrun.quantity.Pressure;
import longrun.sizing.SectionStatus;

/**
 * With everything firing each appliance gets at least its label's least inlet pressure (2015 IRC Appendix A.1). A label
 * that is not entered is a question; a figure is never put in its place.
 */
public final class InletPressureLow {

    static final RuleName RULE = new RuleName("inlet-pressure-low");
    static final String REFERENCE = "International Residential Code Appendix A.1 (fuel gas code Appendix A.1)";
    static final String EDITION = "2015";

    private final Pressures pressures;
    private final Piping piping;
    private final List<Finding> out = new ArrayList<>();

    private InletPressureLow(Pressures pressures) {
        this.pressures = pressures;
        this.piping = pressures.sizing().piping();
    }

    /** The findings of a plan, in the order of its appliances, then of its regulators. */
    public static List<Finding> of(Pressures pressures) {
        InletPressureLow rule = new InletPressureLow(pressures);
        for (int a = 0; a < rule.piping.plan().appliances().size(); a++) {
            rule.appliance(a);
        }
        for (int r = 0; r < pressures.regulators().size(); r++) {
            rule.regulator(r);
        }
        return List.copyOf(rule.out);
    }

    private void appliance(int a) {
        Appliance appliance = piping.plan().appliances().get(a);
        OutletPressure outlet = pressures.outlet(a);
        if (outlet.status() == InletStatus.LOW) {
            out.add(
                    pressures.regulator(outlet.regulator()).reached() == Reached.NO
                            ? notReached(appliance, outlet)
                            : low(appliance, outlet));
        } else if (appliance.minInlet().isUnknown()) {
            out.add(asksLabel(appliance, a));
        } else if (appliance.minInlet().isKnown() && outlet.pressureAtInlet().isEmpty()) {
            beyondTable(appliance, outlet).ifPresent(out::add);
        }
    }

    private Finding low(Appliance appliance, OutletPressure outlet) {
        RegulatorPressure regulator = pressures.regulator(outlet.regulator());
        Droop droop = regulator.droop().orElseThrow();
        Optional<Pressure> least = appliance.minInlet().findValue();
        Pressure setting = regulator.setting().orElseThrow();
        String id = regulator.regulator().id();
        boolean assumed =
                droop.source() == Droop.Source.DEFAULT || outlet.connector().assumed();
        String found = Words.inWc(outlet.pressureAtInlet().orElseThrow()) + " arrives at "
                + piping.names().called(appliance)
                + " with everything firing: " + id + " set to " + Words.inWc(setting) + ", pipe loses "
                + Words.inWc(setting.minus(outlet.pressure().orElse(Pressure.ZERO))) + ", regulator falls "
                + Words.inWc(droop.atLoad().orElse(Pressure.ZERO)) + source(droop) + ", connector loses "
                + Words.inWc(outlet.connector().drop())
                + (outlet.connector().assumed()
                        ? " (assumed: its capacity is not entered, or nobody has looked at it)"
                        : "");
        SettingWindow window = pressures.window(outlet.regulator());
        String required = least.map(p -> "at least " + Words.inWc(p) + " at the inlet, the label's least")
                        .orElse("some pressure at the inlet; the label's least is not entered")
                + settings(id, window);
        return FindingBuilder.finding(
                        RULE,
                        Severity.MUST_FIX,
                        appliance.id(),
                        new Citation(REFERENCE, EDITION, assumed ? Confidence.MEMORY : Confidence.PRINT))
                .foundNaming(found)
                .required(required)
                .remedy(remedy(piping, id, window, "larger pipe, a larger connector or a regulator that falls less"))
                .ask(
                        AskWhom.SUPPLIER,
                        assumed
                                ? Optional.of(
                                        "How far does " + id + " fall at its load, and what does the connector to "
                                                + piping.names().called(appliance) + " carry?")
                                : Optional.empty())
                .atEntry("/regulators/" + outlet.regulator() + "/outlet");
    }

    private static String source(Droop droop) {
        return switch (droop.source()) {
            case ENTERED -> "";
            case MEASURED -> " (as read)";
            case DEFAULT -> " (default, its own figure is not entered)";
        };
    }

    /** "11.2 to 11.67 in. w.c." in words, with the side that is not known left open. */
    static String bounds(SettingWindow window) {
        String lowest =
                window.lowest().map(p -> "no less than " + Words.inWc(p)).orElse("");
        String highest =
                window.highest().map(p -> "no more than " + Words.inWc(p)).orElse("");
        return lowest.isEmpty() ? highest : highest.isEmpty() ? lowest : lowest + " and " + highest;
    }

    /** The setting window as the end of a sentence; nothing where it is not known. */
    static String settings(String regulator, SettingWindow window) {
        String bounds = bounds(window);
        return bounds.isEmpty() ? "" : "; " + regulator + " set to " + bounds;
    }

    /**
     * The remedy for a setting outside the window; both outlets by name where no setting will do.
     *
     * @param otherwise what else to use, to follow "use"
     */
    static String remedy(Piping piping, String regulator, SettingWindow window, String otherwise) {
        if (window.isEmpty()) {
            String low = Words.called(piping, window.lowestFor().orElseThrow());
            String high = Words.called(piping, window.highestFor().orElseThrow());
            String least = Words.inWc(window.lowest().orElseThrow());
            String most = Words.inWc(window.highest().orElseThrow());
            return low.equals(high)
                    ? "No setting of " + regulator + " suits " + low + ", which needs no less than " + least
                            + " and no more than " + most + " at once. Use larger pipe, or a regulator that falls and"
                            + " locks up by less"
                    : "No setting of " + regulator + " serves both: " + low + " needs no less than " + least + ", "
                            + high + " no more than " + most + ". Use larger pipe, a regulator that falls less,"
                            + " or a line regulator for one of them";
        }
        String bounds = bounds(window);
        return bounds.isEmpty()
                ? "Use " + otherwise + "."
                : "Have the fitter set " + regulator + " to " + bounds + ", or use " + otherwise + ".";
    }

    private Finding notReached(Appliance appliance, OutletPressure outlet) {
        int starved = starved(outlet.regulator());
        RegulatorPressure regulator = pressures.regulator(starved);
        String id = regulator.regulator().id();
        boolean entered = regulator.regulator().minInlet().isKnown();
        String needed = entered
                ? "at least "
                        + Words.inWc(
                                regulator.regulator().minInlet().findValue().orElseThrow())
                        + " at the inlet of " + id + ", its least"
                : regulator.setting().isPresent()
                        ? "at least " + Words.inWc(regulator.setting().get()) + " at the inlet of " + id
                                + ", its own setting"
                        : "some pressure at the inlet of " + id;
        int feeder = piping.stageIndex(piping.sectionFeeding(starved));
        return FindingBuilder.finding(
                        RULE, Severity.MUST_FIX, appliance.id(), new Citation(REFERENCE, EDITION, Confidence.PRINT))
                .foundNaming("regulator " + id + " before " + piping.names().called(appliance) + " sees "
                        + Words.inWc(regulator.inlet().orElse(Pressure.ZERO)) + " with everything firing")
                .required(needed)
                .remedy("Set " + pressures.regulator(feeder).regulator().id()
                        + " higher or use larger pipe between it and " + id + ".")
                .atEntry("/regulators/" + feeder + "/outlet");
    }

    /** The first regulator on the way from the tank that is not reached. */
    private int starved(int regulator) {
        int found = regulator;
        int section = piping.sectionFeeding(found);
        while (section >= 0 && pressures.regulator(piping.stageIndex(section)).reached() == Reached.NO) {
            found = piping.stageIndex(section);
            section = piping.sectionFeeding(found);
        }
        return found;
    }

    private Finding asksLabel(Appliance appliance, int a) {
        return FindingBuilder.finding(
                        RULE, Severity.NOTE, appliance.id(), new Citation(REFERENCE, EDITION, Confidence.PRINT))
                .foundNaming("the least inlet pressure of " + piping.names().called(appliance) + " is not entered")
                .required("the least inlet pressure on its rating plate, in in. w.c.")
                .remedy("Enter it from the rating plate, the propane line.")
                .ask(
                        AskWhom.RATING_PLATE,
                        "What least inlet pressure for propane does the rating plate of "
                                + piping.names().called(appliance) + " give?")
                .atEntry("/appliances/" + a + "/minInlet");
    }

    /** A section that has a size and a load, but more load than its table's first row, tells no drop. */
    private Optional<Finding> beyondTable(Appliance appliance, OutletPressure outlet) {
        for (int s = outlet.section(); s >= 0; s = piping.parent(s)) {
            boolean sized = pressures.sizing().section(s).status() != SectionStatus.UNKNOWN
                    && pressures.sizing().section(s).used().isPresent();
            boolean told = pressures.section(s).drop().isPresent();
            boolean reachable = piping.parent(s) < 0
                    || pressures.section(piping.parent(s)).end().isPresent();
            if (sized && !told && reachable && piping.load(s).complete()) {
                return Optional.of(FindingBuilder.finding(
                                RULE, Severity.NOTE, appliance.id(), new Citation(REFERENCE, EDITION, Confidence.PRINT))
                        .foundNaming("the pressure at " + piping.names().called(appliance) + " is not known: section "
                                + piping.section(s).id() + " has "
                                + Words.btuh(piping.load(s).known())
                                + ", more than the first row of its table carries")
                        .required("a load within the table of section "
                                + piping.section(s).id())
                        .remedy("Use a larger size in section "
                                + piping.section(s).id() + ".")
                        .atEntry("/sections/" + s + "/installedSize"));
            }
        }
        return Optional.empty();
    }

    private void regulator(int r) {
        RegulatorPressure regulator = pressures.regulator(r);
        if (piping.sectionFeeding(r) < 0 || !regulator.regulator().minInlet().isUnknown()) {
            return;
        }
        String id = regulator.regulator().id();
        String sees =
                regulator.inlet().map(p -> "; it will see " + Words.inWc(p)).orElse("");
        out.add(FindingBuilder.finding(RULE, Severity.NOTE, id, new Citation(REFERENCE, EDITION, Confidence.PRINT))
                .foundNaming("the least inlet pressure of regulator " + id + " is not entered" + sees)
                .required("the least inlet pressure of its maker")
                .remedy("Enter the least inlet pressure from its maker's sheet.")
                .ask(AskWhom.SUPPLIER, "What inlet pressure does regulator " + id + " need at its load?")
                .atEntry("/regulators/" + r + "/minInlet"));
    }
}
