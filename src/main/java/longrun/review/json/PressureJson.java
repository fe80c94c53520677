package longrun.review.json;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
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
import longrun.quantity.Show;
import longrun.review.Review;

/** The pressures of a review, and where they come from. */
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

    void section(Out out, int i) {
        SectionPressure p = review.pressures().section(i);
        out.number("dropInWc", p.dropInWc(), () -> sections.drop(i));
        out.number("velocityFtPerS", p.velocityFtPerS(), () -> sections.velocity(i));
        out.number("insideFt3", p.insideFt3(), () -> sections.insideVolume(i));
        out.number("staticInWc", p.staticInWc(), () -> sections.staticHead(i));
    }

    void stage(Out out, int i) {
        String id = review.piping().stages().get(i).id();
        OptionalDouble btuh = review.headroom().stageBtuh(i);
        OptionalDouble feet = review.headroom().stageFt(i);
        OptionalDouble regulator = review.headroom().regulatorBtuh(i);
        out.number(
                "headroomBtuh",
                btuh,
                () -> computed(
                        "room in the pipes after " + id,
                        Show.btuh(btuh.orElse(0)),
                        "least headroom of its outlets, every size unchanged",
                        List.of()));
        out.number(
                "headroomFt",
                feet,
                () -> computed(
                        "feet the longest run after " + id + " can grow",
                        Show.decimals(feet.orElse(0), 2) + " ft",
                        review.headroom().stageWords(i),
                        List.of()));
        out.number(
                "regulatorHeadroomBtuh",
                regulator,
                () -> computed(
                        "room in regulator " + id,
                        Show.btuh(regulator.orElse(0)),
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

    void write(Out root) {
        Out.Items outlets = root.list("outlets");
        for (int a = 0; a < review.plan().appliances().size(); a++) {
            outlet(outlets.add(), a);
        }
        Out.Items regulators = root.list("regulators");
        for (int r = 0; r < review.plan().regulators().size(); r++) {
            regulator(regulators.add(), r);
        }
        List<GaugeCheck> checks = GaugeCheck.of(review.pressures());
        if (!checks.isEmpty()) {
            Out.Items readings = root.list("readings");
            checks.forEach(c -> reading(readings.add(), c));
        }
    }

    private void outlet(Out out, int a) {
        OutletPressure p = review.pressures().outlet(a);
        out.text("appliance", review.plan().appliances().get(a).id());
        out.number("pressureInWc", p.pressureInWc(), () -> origins.pressure(a));
        out.number("pressureDroopedInWc", p.pressureDroopedInWc(), () -> origins.pressureDrooped(a));
        out.number("pressureAtInletInWc", p.pressureAtInletInWc(), () -> origins.pressureAtInlet(a));
        out.number("pressureAloneInWc", p.pressureAloneInWc(), () -> origins.pressureAlone(a));
        out.number("pressureIdleInWc", p.pressureIdleInWc(), () -> origins.pressureIdle(a));
        out.number("staticInWc", p.staticInWc(), () -> origins.staticTo(a));
        out.number("headroomBtuh", review.headroom().outletBtuh(a), () -> origins.headroom(review.headroom(), a));
        out.text("status", p.status().written());
    }

    private void regulator(Out out, int r) {
        RegulatorPressure p = review.pressures().regulator(r);
        out.text("id", p.regulator().id());
        out.number("inletInWc", p.inletInWc(), () -> regulators.inlet(r));
        out.number("settingInWc", p.settingInWc(), () -> regulators.setting(r));
        out.number("lockUpInWc", p.lockUpInWc(), () -> regulators.lockUp(r));
        p.droop().ifPresent(d -> out.number("droopInWc", d.atLoadInWc(), () -> regulators.droop(r)));
        SettingWindow window = review.pressures().window(r);
        out.number("lowestSettingInWc", window.lowestInWc(), () -> regulators.window(r));
        out.number("highestSettingInWc", window.highestInWc(), () -> regulators.window(r));
        out.bool("settingWindowComplete", window.complete());
    }

    private void reading(Out out, GaugeCheck c) {
        Plan.Reading r = review.plan().readings().get(c.reading());
        out.text("at", r.at().findText());
        out.text("what", r.what().findText());
        out.number(
                "readInWc",
                c.readInWc(),
                () -> Origin.entered("pressure read", r.pressure().findText().orElse("")));
        out.number(
                "predictedInWc",
                c.predictedInWc(),
                () -> computed(
                        "pressure predicted", inWc(c.predictedInWc()), "the figure the house is judged by", List.of()));
        out.text("verdict", c.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.text("words", c.words());
    }

    private static String inWc(OptionalDouble value) {
        return Show.decimals(value.orElse(0), 2) + " in. w.c.";
    }

    private static Origin computed(String what, String value, String how, List<Origin> inputs) {
        return Origin.derived(what, value, how, Confidence.COMPUTED, inputs);
    }
}
