package longrun.review.json;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.pressure.GaugeCheck;
import longrun.pressure.OutletPressure;
import longrun.pressure.PressureOrigins;
import longrun.pressure.RegulatorOrigins;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SectionOrigins;
import longrun.pressure.SectionPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.quantity.Show;
import longrun.review.Review;

/** Writes the pressures of a review, each with its origin. */
final class PressureJson {

    private final Review review;
    private final PressureOrigins origins;
    private final SectionOrigins sections;
    private final RegulatorOrigins regulators;

    PressureJson(Review review) {
        this.review = review;
        this.origins = new PressureOrigins(review.pressures());
        this.sections = new SectionOrigins(review.pressures());
        this.regulators = new RegulatorOrigins(review.pressures());
    }

    void section(ReviewObject out, int i) {
        SectionPressure p = review.pressures().section(i);
        out.inWc("dropInWc", p.drop(), () -> sections.drop(i));
        out.number("velocityFtPerS", p.velocityFtPerS(), () -> sections.velocity(i));
        out.number("insideFt3", p.insideFt3(), () -> sections.insideVolume(i));
        out.inWc("staticInWc", p.staticLoss(), () -> sections.staticHead(i));
    }

    void stage(ReviewObject out, int i) {
        String id = review.piping().stages().get(i).id();
        Optional<HeatRate> pipes = review.headroom().ofStage(i);
        Optional<Length> length = review.headroom().lengthOfStage(i);
        Optional<HeatRate> regulator = review.headroom().ofRegulator(i);
        out.btuh(
                "headroomBtuh",
                pipes,
                () -> computed(
                        "headroom of the pipes after " + id,
                        Show.btuh(pipes.orElse(HeatRate.ZERO)),
                        "least headroom of its outlets, every size unchanged",
                        List.of()));
        out.feet(
                "headroomFt",
                length,
                () -> computed(
                        "length by which the longest run after " + id + " can grow",
                        Show.decimals(length.orElse(Length.ZERO).feet(), 2) + " ft",
                        review.headroom().stageWords(i),
                        List.of()));
        out.btuh(
                "regulatorHeadroomBtuh",
                regulator,
                () -> computed(
                        "headroom of regulator " + id,
                        Show.btuh(regulator.orElse(HeatRate.ZERO)),
                        "capacity entered less the load",
                        List.of(Origin.entered(
                                "capacity of " + id,
                                review.plan()
                                        .regulators()
                                        .get(i)
                                        .capacity()
                                        .findText()
                                        .orElse("")))));
    }

    void write(ReviewObject root) {
        ReviewObject.Items outlets = root.list("outlets");
        for (int a = 0; a < review.plan().appliances().size(); a++) {
            outlet(outlets.add(), a);
        }
        ReviewObject.Items regulators = root.list("regulators");
        for (int r = 0; r < review.plan().regulators().size(); r++) {
            regulator(regulators.add(), r);
        }
        List<GaugeCheck> checks = GaugeCheck.of(review.pressures());
        if (!checks.isEmpty()) {
            ReviewObject.Items readings = root.list("readings");
            checks.forEach(c -> reading(readings.add(), c));
        }
    }

    private void outlet(ReviewObject out, int a) {
        OutletPressure p = review.pressures().outlet(a);
        out.text("appliance", review.plan().appliances().get(a).id());
        out.inWc("pressureInWc", p.pressure(), () -> origins.pressure(a));
        out.inWc("pressureDroopedInWc", p.pressureDrooped(), () -> origins.pressureDrooped(a));
        out.inWc("pressureAtInletInWc", p.pressureAtInlet(), () -> origins.pressureAtInlet(a));
        out.inWc("pressureAloneInWc", p.pressureAlone(), () -> origins.pressureAlone(a));
        out.inWc("pressureIdleInWc", p.pressureIdle(), () -> origins.pressureIdle(a));
        out.inWc("staticInWc", p.staticLoss(), () -> origins.staticTo(a));
        out.btuh("headroomBtuh", review.headroom().atAppliance(a), () -> origins.headroom(review.headroom(), a));
        out.text("status", p.status().written());
    }

    private void regulator(ReviewObject out, int r) {
        RegulatorPressure p = review.pressures().regulator(r);
        out.text("id", p.regulator().id());
        out.inWc("inletInWc", p.inlet(), () -> regulators.inlet(r));
        out.inWc("settingInWc", p.setting(), () -> regulators.setting(r));
        out.inWc("lockUpInWc", p.lockUp(), () -> regulators.lockUp(r));
        p.droop().ifPresent(d -> out.inWc("droopInWc", d.atLoad(), () -> regulators.droop(r)));
        SettingWindow window = review.pressures().window(r);
        out.inWc("lowestSettingInWc", window.lowest(), () -> regulators.window(r));
        out.inWc("highestSettingInWc", window.highest(), () -> regulators.window(r));
        out.bool("settingWindowComplete", window.complete());
    }

    private void reading(ReviewObject out, GaugeCheck c) {
        Plan.Reading r = review.plan().readings().get(c.reading());
        out.text("at", r.at().findText());
        out.text("what", r.what().findText());
        out.number(
                "readInWc",
                c.read().inWc(),
                () -> Origin.entered("pressure read", r.pressure().findText().orElse("")));
        out.inWc(
                "predictedInWc",
                c.predicted(),
                () -> computed(
                        "pressure predicted", inWc(c.predicted()), "the figure the house is judged by", List.of()));
        out.text("verdict", c.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.text("words", c.words());
    }

    private static String inWc(Optional<Pressure> value) {
        return Show.decimals(value.orElse(Pressure.ZERO).inWc(), 2) + " in. w.c.";
    }

    private static Origin computed(String what, String value, String how, List<Origin> inputs) {
        return Origin.derived(what, value, how, Confidence.COMPUTED, inputs);
    }
}
