package longrun.draft.sections;

import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.pressure.Droop;
import longrun.pressure.OutletPressure;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.review.Review;
import longrun.words.UnitSystem;

/** Sentences on the pressure at an appliance's inlet: where it was lost, what the label requires, what may be added. */
public final class InletWords {

    private static final double SHOWN_FROM_IN_WC = 0.005; // shown with two decimals

    private final Review review;
    private final int appliance;
    private final OutletPressure outlet;
    private final UnitSystem units;

    /** @param appliance the index of the appliance */
    public InletWords(Review review, int appliance, UnitSystem units) {
        this.review = review;
        this.appliance = appliance;
        this.outlet = review.pressures().outlet(appliance);
        this.units = units;
    }

    private String pressure(Pressure p) {
        return PressureWords.pressure(p, units);
    }

    /** The losses from the setting of the regulator to the inlet. */
    public String losses() {
        RegulatorPressure line = review.pressures().regulator(outlet.regulator());
        Optional<Pressure> fallen = PressureWords.drooped(line);
        if (fallen.isEmpty() || outlet.pressureDrooped().isEmpty()) {
            return "With everything firing.";
        }
        Pressure set = line.setting().orElseThrow();
        Pressure pipe = fallen.get().minus(outlet.pressureDrooped().get());
        String connector = pressure(outlet.connector().drop())
                + (outlet.connector().assumed() ? " (assumed, its capacity is not entered)" : "");
        return "With everything firing: of the " + pressure(set) + " set, the regulator\u2019s fall takes "
                + pressure(set.minus(fallen.get())) + ", the pipe " + pressure(pipe) + ", the connector "
                + (connector.endsWith(".") ? connector : connector + ".");
    }

    /** The pressure compared with the label. */
    public String againstLabel() {
        Appliance a = review.plan().appliances().get(appliance);
        String least = label(a.minInlet());
        String greatest = label(a.maxInlet());
        return switch (outlet.status()) {
            case ENOUGH -> "The label asks for " + least + " to " + greatest + ": enough" + assumptions() + ".";
            case LOW ->
                least.isEmpty()
                        ? "Too low: a regulator before it does not get what it needs."
                        : "Too low: the label asks for " + least + " or more.";
            case HIGH ->
                "Too high with nothing firing: "
                        + PressureWords.pressure(outlet.pressureIdle(), units) + ", and the label allows "
                        + greatest
                        + " at most.";
            case UNKNOWN -> unknown(least, greatest);
        };
    }

    /** The assumptions the verdict rests on; blank for none. */
    private String assumptions() {
        boolean fall = review.pressures()
                .regulator(outlet.regulator())
                .droop()
                .filter(d -> d.source() == Droop.Source.DEFAULT)
                .isPresent();
        String id = review.pressures().regulator(outlet.regulator()).regulator().id();
        String falls = fall ? id + " falls no more than the default held from memory" : "";
        String takes = outlet.connector().assumed() ? "the connector takes no more than assumed" : "";
        String both = falls + (falls.isEmpty() || takes.isEmpty() ? "" : " and ") + takes;
        return both.isEmpty() ? "" : ", if " + both;
    }

    private static String unknown(String least, String greatest) {
        if (least.isEmpty() && greatest.isEmpty()) {
            return "Whether that is enough is not known: neither its label\u2019s least nor its greatest is entered.";
        }
        if (greatest.isEmpty()) {
            return "Its label\u2019s least is " + least + "; the greatest is not entered.";
        }
        return least.isEmpty()
                ? "Its label allows up to " + greatest
                        + "; whether this is enough is not known, the least is not entered."
                : "Whether that is enough is not known: what a regulator before it needs is not entered.";
    }

    private String label(Fact<Pressure> entered) {
        return entered.findValue().map(this::pressure).orElse("");
    }

    /** How much load may be added here. */
    public String headroom() {
        Optional<HeatRate> more = review.headroom().atAppliance(appliance);
        Optional<String> grows = review.headroom().growsFirst(appliance);
        if (more.isEmpty()) {
            return "What may be added here is not known: an entry on the way is missing.";
        }
        if (more.get().btuh() == 0) {
            return "Nothing may be added here"
                    + grows.map(s -> ": section " + s + " carries no more").orElse("") + ".";
        }
        String pipe = "Up to " + PressureWords.heat(more, units) + " more may be drawn here with no pipe changed"
                + grows.map(s -> "; past that section " + s + " grows").orElse("") + ".";
        Optional<HeatRate> regulator = review.headroom().ofRegulator(outlet.regulator());
        return regulator.isPresent() && regulator.get().compareTo(more.get()) < 0
                ? pipe + " The regulator itself has only " + PressureWords.heat(regulator, units) + " to spare."
                : pipe;
    }

    /** The pressure lost or gained by height, which is not counted with the losses; blank where it is too small to show. */
    public String rise() {
        double lost = outlet.staticLoss().orElse(Pressure.ZERO).inWc();
        if (Math.abs(lost) < SHOWN_FROM_IN_WC) {
            return "";
        }
        return lost > 0
                ? " Propane is heavier than air: rising costs another " + pressure(Pressure.ofInWc(lost))
                        + ", not counted above."
                : " Propane is heavier than air: running down gives " + pressure(Pressure.ofInWc(-lost))
                        + " back, not counted above.";
    }
}
