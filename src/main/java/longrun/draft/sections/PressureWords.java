package longrun.draft.sections;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.pressure.Droop;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.words.DisplayUnits;
import longrun.words.UnitSystem;

/** Pressures, and the droop, rating and loss of a regulator, in words. */
public final class PressureWords {

    private PressureWords() {}

    /** A pressure in in. w.c., or in psi from 1.5 psi; in kPa with metric units. */
    public static String pressure(Optional<Pressure> pressure, UnitSystem units) {
        return pressure.map(p -> pressure(p, units)).orElse("not known");
    }

    /** A pressure in in. w.c., or in psi from 1.5 psi; in kPa with metric units. */
    public static String pressure(Pressure p, UnitSystem units) {
        return (p.psi() < 1.5 ? DisplayUnits.APPLIANCE_PRESSURE : DisplayUnits.LINE_PRESSURE).words(units, p);
    }

    /** A heat rate with its unit; "not known" where it is empty. */
    public static String heat(Optional<HeatRate> rate, UnitSystem units) {
        return rate.map(r -> units.heat(r) + " " + units.heatUnit().name()).orElse("not known");
    }

    /** The outlet pressure of a regulator with everything firing; zero where nothing is left. */
    public static Optional<Pressure> drooped(RegulatorPressure line) {
        return line.drooped().map(Pressure::orNone);
    }

    /** How far the outlet falls at its load, and the source of that figure. */
    public static String fall(RegulatorPressure line, UnitSystem units) {
        if (line.droop().isEmpty() || line.droop().get().atLoad().isEmpty()) {
            return "How far it falls at its load is not known.";
        }
        Droop d = line.droop().get();
        boolean high = line.setting().orElse(Pressure.ZERO).psi() >= 1.5;
        String falls = "With everything firing its outlet falls by "
                + (high ? DisplayUnits.LINE_PRESSURE : DisplayUnits.APPLIANCE_PRESSURE)
                        .words(units, d.atLoad().get());
        return switch (d.source()) {
            case ENTERED -> falls + ", by its maker\u2019s figure.";
            case MEASURED -> falls + ", as measured with a gauge; that replaces the default.";
            case DEFAULT ->
                falls + ", a default held from memory: enter its maker\u2019s figure, or a gauge reading at it.";
        };
    }

    /** Whether its rated capacity applies at its inlet pressure. */
    public static String rating(RegulatorPressure line, UnitSystem units) {
        Regulator r = line.regulator();
        if (line.capacity().isEmpty()) {
            return "Its capacity is not entered.";
        }
        if (line.inlet().isEmpty()) {
            return r.fedBy().is("tank")
                    ? "Its inlet is at the tank\u2019s own pressure, which varies with the weather."
                    : "";
        }
        String sees = pressure(line.inlet(), units);
        if (line.ratingHolds().isEmpty()) {
            return "Its inlet will be at " + sees
                    + "; the inlet pressure for which its capacity is rated is not entered.";
        }
        String rated = pressure(r.capacityAtInlet().findValue(), units);
        return line.ratingHolds().get()
                ? "It is rated at an inlet of " + rated + " and will have " + sees + ": the rating applies."
                : "It is rated at an inlet of " + rated + " and will have only " + sees
                        + ": the rating does not apply; ask its maker what it passes there.";
    }

    /** The condition of the 2 psi tables for a line regulator; blank for other kinds. */
    public static String loss(RegulatorPressure line, UnitSystem units) {
        Regulator r = line.regulator();
        if (!r.kind().is(RegulatorKind.LINE)) {
            return "";
        }
        String rule =
                "The 2 psi tables hold only while a line regulator itself loses no more than 1/2 psi at its load; ";
        if (!r.lossAtLoad().isKnown()) {
            return rule + "what it loses is not entered: ask its maker.";
        }
        Pressure loss = r.lossAtLoad().findValue().orElseThrow();
        return rule + "it loses " + DisplayUnits.LINE_PRESSURE.words(units, loss)
                + (loss.psi() <= 0.5 + 1e-9 ? ": they hold." : ": they do not hold, it needs a larger one.");
    }

    /** The names of regulators and appliances by their ids. */
    public static Map<String, String> points(DraftValue entered) {
        JsonNode draft = entered.node();
        Map<String, String> out = new LinkedHashMap<>();
        draft.path("regulators").forEach(r -> {
            String name = r.path("name").asText("");
            String id = r.path("id").asText("");
            out.put(id, "regulator " + id + (name.isBlank() ? "" : ", " + name));
        });
        out.putAll(DraftAppliances.of(entered).byId());
        out.remove("");
        return out;
    }
}
