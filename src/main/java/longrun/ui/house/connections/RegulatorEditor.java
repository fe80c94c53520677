package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.PlaceKind;
import longrun.draft.entry.DraftValue;
import longrun.draft.hookup.DrawnParts;
import longrun.drawing.part.LineRegulatorDrawing;
import longrun.drawing.part.VentDrawing;
import longrun.plan.Regulator;
import longrun.ui.field.AnswerField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.FindingList;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** A regulator: its vent in elevation with what is measured from where, and the parts around a line regulator. */
final class RegulatorEditor implements PartsEditor {

    private static final Map<String, String> SETTINGS = new LinkedHashMap<>();
    private static final Map<String, String> VENTS = new LinkedHashMap<>();

    static {
        SETTINGS.put("outdoors", "outdoors");
        SETTINGS.put("indoors", "indoors");
        SETTINGS.put("underground", "below ground");
        SETTINGS.put("concealed", "concealed");
        VENTS.put("outdoors", "outdoors");
        VENTS.put("limiter", "a vent limiter");
        VENTS.put("piped", "piped outdoors");
        VENTS.put("none", "there is none");
    }

    private final HousePage desk;
    private final String at;
    private final FieldList fields = new FieldList();
    private final Element drawing = Dom.el("div", "pan-box")
            .setAttribute("tabindex", "0")
            .setAttribute("role", "group")
            .setAttribute("aria-label", "The regulator, drawn");
    private final Element facts = Dom.el("div", "grid");
    private final FindingList finds;
    private final Element element;
    private String kindShown = "?";
    private String drawn = "";

    RegulatorEditor(HousePage desk, String at) {
        this.desk = desk;
        this.at = at;
        finds = new FindingList(desk);
        element = Dom.el("div", "bench", drawing, facts, finds.element());
    }

    @Override
    public String pointer() {
        return at;
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public FieldList fields() {
        return fields;
    }

    @Override
    public void show(boolean write) {
        DraftValue r = desk.session().at(at);
        String kind = r.textOf("kind");
        boolean fresh = !kind.equals(kindShown);
        if (fresh) {
            kindShown = kind;
            fields.clear();
            facts.removeAllChildren();
            entries(kind);
        }
        fields.show(write || fresh);
        String svg = DrawnParts.regulator(r)
                .map(known -> kind.equals("line")
                        ? LineRegulatorDrawing.of(known) + (isOutdoors(known) ? VentDrawing.of(known) : "")
                        : VentDrawing.of(known))
                .orElse("");
        if (!svg.equals(drawn)) {
            drawn = svg;
            drawing.removeAllChildren();
            drawing.appendChild(Dom.drawing(svg));
        }
        finds.show(desk.session().findings().stream()
                .filter(f -> f.field().startsWith(at + "/") && PlaceKind.CONNECTIONS.holds(f.field()))
                .toList());
    }

    private static boolean isOutdoors(Regulator r) {
        return r.vent().isKnown() && !r.vent().is(v -> v == longrun.plan.choice.RegulatorVent.LIMITER);
    }

    private void entries(String kind) {
        add(AnswerField.of(desk, at + "/setting", "The regulator is", SETTINGS));
        if (kind.equals("line")) {
            yesNo("shutoffBefore", "A shutoff directly ahead of it");
            yesNo("teeBefore", "A plugged tee between shutoff and regulator");
            yesNo("teeAfter", "A plugged tee after it");
            add(new QuantityField<>(
                    desk,
                    at + "/unionWithin",
                    "Nearest union",
                    "The tape runs along the pipe, from the regulator to the union.",
                    DisplayUnits.SHORT_LENGTH,
                    true,
                    "there is none"));
            add(AnswerField.of(desk, at + "/vent", "Its vent", VENTS));
            yesNo("access", "A hand can reach it");
        } else {
            add(AnswerField.of(desk, at + "/vent", "Its vent", VENTS));
            yesNo("underEaves", "Under the eaves");
        }
        String from = "The tape starts at the relief outlet, not at the body";
        distance("ventToOpening", "Vent to an opening below it", from + ": level, to the opening\u2019s near edge.");
        distance("ventToIgnition", "Vent to a spark or flame", from + ", in any direction.");
        distance("ventToIntake", "Vent to an air intake", from + ", in any direction.");
        distance("ventToVentTerminal", "Vent to an appliance\u2019s vent terminal", from + ".");
    }

    private void distance(String entry, String label, String tape) {
        add(new QuantityField<>(desk, at + "/" + entry, label, tape, DisplayUnits.LENGTH, true, "there is none"));
    }

    private void yesNo(String entry, String label) {
        add(AnswerField.yesNo(desk, at + "/" + entry, label));
    }

    private void add(Field field) {
        facts.appendChild(fields.add(field).element());
    }
}
