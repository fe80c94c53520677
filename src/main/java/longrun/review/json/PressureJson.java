package longrun.review.json;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.pressure.OutletPressure;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SectionPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Show;
import longrun.review.Review;

/** The pressures of a review, and where they come from. */
final class PressureJson {

    private static final String DROP =
            "the code's equation in flow form over the section's length and counted fittings (2018 International Fuel Gas"
                    + " Code, 402.4); tubing from its own table";
    private static final String HEADROOM =
            "the least spare of the table's cells on the way back to the tank, with every size unchanged";

    private final Review review;

    PressureJson(Review review) {
        this.review = review;
    }

    static void section(Review review, Out out, int i) {
        SectionPressure p = review.pressures().section(i);
        String id = review.piping().section(i).id();
        out.number(
                "dropInWc",
                p.dropInWc(),
                () -> inWc("pressure lost in " + id, p.dropInWc(), DROP, Confidence.COMPUTED, over(review, i)));
        out.number(
                "velocityFtPerS",
                p.velocityFtPerS(),
                () -> derived(
                        "velocity in " + id,
                        Show.decimals(p.velocityFtPerS().orElse(0), 1) + " ft/s",
                        "flow over the bore's area, gas at 60 degF and the pressure at its end",
                        Confidence.COMPUTED,
                        over(review, i)));
        out.number(
                "insideFt3",
                p.insideFt3(),
                () -> derived(
                        "volume inside " + id,
                        Show.plain(p.insideFt3().orElse(0)) + " ft3",
                        "area of the bore over the measured length",
                        Confidence.COMPUTED,
                        over(review, i)));
        out.number(
                "staticInWc",
                p.staticInWc(),
                () -> inWc(
                        "lost by rising in " + id,
                        p.staticInWc(),
                        "0.0073 in. w.c. a foot of rise, propane of specific gravity 1.5; shown apart",
                        Confidence.COMPUTED,
                        List.of(Origin.entered(
                                "legs of " + id,
                                review.piping().section(i).legs().findText().orElse("")))));
    }

    private static List<Origin> over(Review review, int i) {
        String id = review.piping().section(i).id();
        return List.of(
                Origin.derived(
                        "load of " + id,
                        Show.btuh(review.piping().load(i).knownBtuh()),
                        "its own figure",
                        Confidence.PRINT,
                        List.of()),
                Origin.derived(
                        "length of " + id,
                        Show.feet(review.piping().measuredFt(i).orElse(0)),
                        "its own figure",
                        Confidence.PRINT,
                        List.of()),
                Origin.derived(
                        "size of " + id,
                        review.sizing().section(i).size().orElse("unknown"),
                        "its own figure",
                        review.sizing().section(i).confidence().orElse(Confidence.COMPUTED),
                        List.of()));
    }

    static void stage(Review review, Out out, int i) {
        String id = review.piping().stages().get(i).id();
        OptionalDouble btuh = review.headroom().stageBtuh(i);
        OptionalDouble feet = review.headroom().stageFt(i);
        OptionalDouble regulator = review.headroom().regulatorBtuh(i);
        out.number("headroomBtuh", btuh, headroom("room in the pipes after " + id, btuh));
        out.number(
                "headroomFt",
                feet,
                () -> derived(
                        "feet the longest run after " + id + " can grow",
                        Show.decimals(feet.orElse(0), 2) + " ft",
                        "to the end of the row, or of the last row at which every size still carries",
                        Confidence.COMPUTED,
                        List.of()));
        out.number(
                "regulatorHeadroomBtuh",
                regulator,
                () -> derived(
                        "room in regulator " + id,
                        Show.btuh(regulator.orElse(0)),
                        "capacity entered less the load",
                        Confidence.COMPUTED,
                        List.of(Origin.entered(
                                "capacity of " + id,
                                review.plan()
                                        .regulators()
                                        .get(i)
                                        .capacity()
                                        .findText()
                                        .orElse("")))));
    }

    private static Supplier<Origin> headroom(String what, OptionalDouble value) {
        return () -> derived(what, Show.btuh(value.orElse(0)), HEADROOM, Confidence.COMPUTED, List.of());
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
    }

    private void outlet(Out out, int a) {
        OutletPressure p = review.pressures().outlet(a);
        String id = review.plan().appliances().get(a).id();
        out.text("appliance", id);
        List<Origin> way = way(p);
        number(
                out,
                "pressureInWc",
                p.pressureInWc(),
                "pressure at the pipe's end before " + id + ", all firing",
                "the regulator's setting less the drop of every section on the way",
                way);
        number(
                out,
                "pressureDroopedInWc",
                p.pressureDroopedInWc(),
                "the same with the regulator drooping",
                "the setting less droop at this load (2 in. w.c. where its maker's figure is not entered, memory)",
                way);
        number(
                out,
                "pressureAtInletInWc",
                p.pressureAtInletInWc(),
                "pressure at the inlet of " + id,
                "the drooped pressure less the connector's drop"
                        + (p.connector().assumed() ? ", the whole rated drop assumed" : ""),
                way);
        number(
                out,
                "pressureAloneInWc",
                p.pressureAloneInWc(),
                "pressure at the pipe's end with " + id + " alone",
                "the setting less the drop at this appliance's own load",
                way);
        number(
                out,
                "pressureIdleInWc",
                p.pressureIdleInWc(),
                "pressure at " + id + " with nothing firing",
                "lock-up of the regulator, 120 % of the setting where not entered (memory)",
                way);
        number(out, "staticInWc", p.staticInWc(), "lost by rising to " + id, "0.0073 in. w.c. a foot of rise", way);
        OptionalDouble room = review.headroom().outletBtuh(a);
        out.number("headroomBtuh", room, headroom("what can be added at " + id, room));
        out.text("status", p.status().written());
    }

    private List<Origin> way(OutletPressure p) {
        if (p.regulator() < 0) {
            return List.of();
        }
        RegulatorPressure r = review.pressures().regulator(p.regulator());
        return List.of(Origin.entered(
                "setting of " + r.regulator().id(),
                r.regulator().outlet().findText().orElse("unknown")));
    }

    private void regulator(Out out, int r) {
        RegulatorPressure p = review.pressures().regulator(r);
        String id = p.regulator().id();
        out.text("id", id);
        number(
                out,
                "inletInWc",
                p.inletInWc(),
                "inlet pressure " + id + " will see",
                "what the stage before delivers, drooped",
                List.of());
        number(
                out,
                "settingInWc",
                p.settingInWc(),
                "setting of " + id,
                "as entered",
                List.of(Origin.entered(
                        "outlet of " + id, p.regulator().outlet().findText().orElse("unknown"))));
        number(
                out,
                "lockUpInWc",
                p.lockUpInWc(),
                "lock-up of " + id,
                p.lockUpEntered() ? "the share entered" : "120 % of the setting (memory)",
                List.of());
        number(
                out,
                "droopInWc",
                p.droop().map(d -> d.atLoadInWc()).orElse(OptionalDouble.empty()),
                "droop of " + id,
                "droop at capacity in proportion to the load",
                List.of());
        SettingWindow window = review.pressures().window(r);
        number(
                out,
                "lowestSettingInWc",
                window.lowestInWc(),
                "lowest setting of " + id,
                "greatest over its outlets of label least, drop, droop and connector"
                        + window.lowestFor().map(f -> "; asked by " + f).orElse(""),
                List.of());
        number(
                out,
                "highestSettingInWc",
                window.highestInWc(),
                "highest setting of " + id,
                "least over its outlets of label greatest over lock-up"
                        + window.highestFor().map(f -> "; asked by " + f).orElse(""),
                List.of());
        out.bool("settingWindowComplete", window.complete());
    }

    private static void number(
            Out out, String field, OptionalDouble value, String what, String how, List<Origin> inputs) {
        out.number(field, value, () -> inWc(what, value, how, Confidence.COMPUTED, inputs));
    }

    private static Origin inWc(
            String what, OptionalDouble value, String how, Confidence confidence, List<Origin> inputs) {
        return derived(what, Show.decimals(value.orElse(0), 2) + " in. w.c.", how, confidence, inputs);
    }

    private static Origin derived(String what, String value, String how, Confidence confidence, List<Origin> inputs) {
        return Origin.derived(what, value, how, confidence, inputs);
    }
}
