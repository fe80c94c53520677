package longrun.draft.sections;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.Entered;
import longrun.draft.entry.EnteredAppliances;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.pressure.Droop;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.words.DisplayUnits;
import longrun.words.UnitSystem;

/** Pressures, and what falls and stands at a regulator, in the words of the page. */
public final class PressureWords {

    private PressureWords() {}

    /** In. w.c., psi from 1.5 psi; kPa in metric. */
    public static String pressure(Optional<Pressure> pressure, UnitSystem units) {
        return pressure.map(p -> pressure(p, units)).orElse("not known");
    }

    public static String pressure(Pressure p, UnitSystem units) {
        return (p.psi() < 1.5 ? DisplayUnits.APPLIANCE_PRESSURE : DisplayUnits.LINE_PRESSURE).words(units, p);
    }

    public static String heat(Optional<HeatRate> rate, UnitSystem units) {
        return rate.map(r -> units.heat(r) + " " + units.heatUnit().name()).orElse("not known");
    }

    public static Optional<Pressure> drooped(RegulatorPressure line) {
        return line.drooped().map(Pressure::orNone);
    }

    /** How far it falls, and who says so. */
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
            case MEASURED -> falls + ", as the gauge read; that stands in place of the default.";
            case DEFAULT ->
                falls + ", a default held from memory: enter its maker\u2019s figure, or a gauge reading at it.";
        };
    }

    /** Whether its rating holds at the inlet it will see. */
    public static String rating(RegulatorPressure line, UnitSystem units) {
        Regulator r = line.regulator();
        if (line.capacity().isEmpty()) {
            return "Its capacity is not entered.";
        }
        if (line.inlet().isEmpty()) {
            return r.fedBy().is("tank") ? "It sees the tank\u2019s own pressure, which goes with the weather." : "";
        }
        String sees = pressure(line.inlet(), units);
        if (line.ratingHolds().isEmpty()) {
            return "It will see " + sees + "; at which inlet its capacity is rated is not entered.";
        }
        String rated = pressure(r.capacityAtInlet().findValue(), units);
        return line.ratingHolds().get()
                ? "Rated at an inlet of " + rated + " and will see " + sees + ": the rating holds."
                : "Rated at an inlet of " + rated + " and will see only " + sees
                        + ": ask what it passes there, the rating does not hold.";
    }

    /** The condition of the 2 psi tables, where it stands on 2 psi. */
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

    /** Regulators and appliances by id, as a person calls them. */
    public static Map<String, String> points(Entered entered) {
        JsonNode draft = entered.node();
        Map<String, String> out = new LinkedHashMap<>();
        draft.path("regulators").forEach(r -> {
            String name = r.path("name").asText("");
            String id = r.path("id").asText("");
            out.put(id, "regulator " + id + (name.isBlank() ? "" : ", " + name));
        });
        out.putAll(EnteredAppliances.of(entered).byId());
        out.remove("");
        return out;
    }
}
