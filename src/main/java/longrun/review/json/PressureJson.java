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
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SectionPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Show;
import longrun.review.Review;

/** The pressures of a review, and where they come from. */
final class PressureJson {

    private final Review review;
    private final PressureOrigins origins;

    PressureJson(Review review) {
        this.review = review;
        this.origins = new PressureOrigins(review.pressures());
    }

    void section(Out out, int i) {
        SectionPressure p = review.pressures().section(i);
        out.number("dropInWc", p.dropInWc(), () -> origins.drop(i));
        out.number("velocityFtPerS", p.velocityFtPerS(), () -> origins.velocity(i));
        out.number("insideFt3", p.insideFt3(), () -> origins.insideVolume(i));
        out.number("staticInWc", p.staticInWc(), () -> origins.staticHead(i));
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
        out.number(
                "staticInWc",
                p.staticInWc(),
                () -> computed(
                        "lost by rising to " + review.plan().appliances().get(a).id(),
                        Show.decimals(p.staticInWc().orElse(0), 3) + " in. w.c.",
                        "sum over the sections of its stage of 0.0073 in. w.c. a foot of rise; in none of the others",
                        List.of()));
        out.number("headroomBtuh", review.headroom().outletBtuh(a), () -> origins.headroom(review.headroom(), a));
        out.text("status", p.status().written());
    }

    private void regulator(Out out, int r) {
        RegulatorPressure p = review.pressures().regulator(r);
        String id = p.regulator().id();
        out.text("id", id);
        out.number(
                "inletInWc",
                p.inletInWc(),
                () -> computed(
                        "inlet pressure " + id + " will see",
                        inWc(p.inletInWc()),
                        "what the stage before it delivers, drooped, everything firing",
                        List.of()));
        out.number(
                "settingInWc",
                p.settingInWc(),
                () -> Origin.entered(
                        "setting of " + id, p.regulator().outlet().findText().orElse("")));
        out.number(
                "lockUpInWc",
                p.lockUpInWc(),
                () -> new Origin(
                        "lock-up of " + id,
                        inWc(p.lockUpInWc()),
                        p.lockUpEntered() ? "the share entered, of the setting" : "120 % of the setting",
                        java.util.Optional.of(p.lockUpEntered() ? Confidence.COMPUTED : Confidence.MEMORY),
                        List.of(Origin.entered(
                                "setting of " + id,
                                p.regulator().outlet().findText().orElse("")))));
        p.droop().ifPresent(d -> out.number("droopInWc", d.atLoadInWc(), () -> origins.droop(r)));
        SettingWindow window = review.pressures().window(r);
        out.number("lowestSettingInWc", window.lowestInWc(), () -> origins.window(r));
        out.number("highestSettingInWc", window.highestInWc(), () -> origins.window(r));
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
