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
import longrun.plan.Appliance;
import longrun.quantity.Pressure;
import longrun.quantity.Same;

/**
 * With nothing firing no appliance gets more than its label's greatest inlet pressure (2015 IRC Appendix A.1). Line
 * pressure at an appliance is a fault of its own and not told here.
 */
public final class InletPressureHigh {

    static final RuleName RULE = new RuleName("inlet-pressure-high");

    private InletPressureHigh() {}

    /** The findings of a plan, in the order of its appliances. */
    public static List<Finding> of(Pressures pressures) {
        List<Finding> out = new ArrayList<>();
        List<Appliance> appliances = pressures.sizing().piping().plan().appliances();
        for (int a = 0; a < appliances.size(); a++) {
            Appliance appliance = appliances.get(a);
            OutletPressure outlet = pressures.outlet(a);
            if (LinePressure.stands(pressures, outlet).orElse(false)) {
                continue; // told as a regulator that is lacking
            }
            String called = pressures.sizing().piping().names().called(appliance);
            if (appliance.maxInlet().isUnknown()) {
                out.add(asksLabel(
                        appliance, a, called, "the greatest inlet pressure of " + called + " is not entered"));
            } else if (appliance.maxInlet().isKnown() && !LinePressure.isBelieved(appliance)) {
                out.add(asksLabel(
                        appliance,
                        a,
                        called,
                        "the greatest inlet pressure of " + called + " is entered as "
                                + appliance.maxInlet().findText().orElse("")
                                + ", line pressure, which no household burner is labelled for"));
            } else if (isOver(appliance, outlet)) {
                out.add(high(pressures, appliance, called, outlet));
            }
        }
        return List.copyOf(out);
    }

    /** Told even where the pressure is low too: the two are two faults. */
    private static boolean isOver(Appliance appliance, OutletPressure outlet) {
        return outlet.pressureIdle().isPresent()
                && appliance
                        .maxInlet()
                        .is(p -> !Same.atMost(outlet.pressureIdle().get().inWc(), p.inWc()));
    }

    private static Finding high(Pressures pressures, Appliance appliance, String called, OutletPressure outlet) {
        RegulatorPressure regulator = pressures.regulator(outlet.regulator());
        String id = regulator.regulator().id();
        Pressure setting = regulator.setting().orElseThrow();
        Pressure idle = outlet.pressureIdle().orElseThrow();
        Pressure greatest = appliance.maxInlet().findValue().orElseThrow();
        SettingWindow window = pressures.window(outlet.regulator());
        boolean assumed = !regulator.lockUpEntered();
        return FindingBuilder.finding(
                        RULE,
                        Severity.MUST_FIX,
                        appliance.id(),
                        new Citation(
                                InletPressureLow.REFERENCE,
                                InletPressureLow.EDITION,
                                assumed ? Confidence.MEMORY : Confidence.PRINT))
                .foundNaming(Words.inWc(idle) + " stands at " + called + " with nothing firing: " + id
                        + " set to "
                        + Words.inWc(setting) + ", lock-up at " + Words.number(100 * idle.inWc() / setting.inWc(), 1)
                        + " %"
                        + (assumed ? " (default, its own figure is not entered)" : ""))
                .required("no more than " + Words.inWc(greatest) + " at the inlet, the label's greatest"
                        + InletPressureLow.settings(id, window))
                .remedy(InletPressureLow.remedy(
                        pressures.sizing().piping(), id, window, "a regulator that locks up lower"))
                .ask(
                        AskWhom.SUPPLIER,
                        assumed ? Optional.of("At what pressure does " + id + " lock up?") : Optional.empty())
                .atEntry("/regulators/" + outlet.regulator() + "/outlet");
    }

    private static Finding asksLabel(Appliance appliance, int a, String called, String found) {
        return FindingBuilder.finding(
                        RULE,
                        Severity.NOTE,
                        appliance.id(),
                        new Citation(InletPressureLow.REFERENCE, InletPressureLow.EDITION, Confidence.PRINT))
                .foundNaming(found)
                .required("the greatest inlet pressure on its rating plate, in in. w.c.")
                .remedy("Enter it from the rating plate, the propane line.")
                .ask(
                        AskWhom.RATING_PLATE,
                        "What greatest inlet pressure for propane does the rating plate of " + called + " give?")
                .atEntry("/appliances/" + a + "/maxInlet");
    }
}
