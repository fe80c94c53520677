package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.TankChoice;
import longrun.drawing.tank.TankShape;
import longrun.ui.frame.Dom;

/** The tanks and cylinders, drawn to one scale on one ground, to choose from; and whether the tank lies buried. */
final class TankPicker {

    private final Map<TankChoice, Element> tanks = new EnumMap<>(TankChoice.class);
    private final Element above;
    private final Element buried;
    private final Element note = Dom.text("div", "note", "");
    private final Element lies;
    private final Element picker = Dom.el("div", "tanks");
    private String shown = "";

    TankPicker(FillActions hand) {
        picker.setAttribute("role", "radiogroup").setAttribute("aria-label", "Which tank, all drawn to one scale");
        for (TankChoice each : TankChoice.values()) {
            Element radio = radio("tank", each.name(), () -> hand.chose(each));
            TankShape shape = new TankShape(each.wideIn(), each.highIn(), each.isCylinder());
            picker.appendChild(Dom.el(
                    "label",
                    "tk",
                    radio,
                    Dom.drawing(shape.svg()),
                    Dom.el("b", "", Dom.words(each.number() + " "), Dom.text("small", "", each.unit()))));
            tanks.put(each, radio);
        }
        above = radio("lies", "above", () -> hand.lies(false));
        buried = radio("lies", "buried", () -> hand.lies(true));
        Element ways = Dom.el(
                        "div",
                        "ans",
                        Dom.el("label", "", above, Dom.text("span", "", "above ground")),
                        Dom.el("label", "", buried, Dom.text("span", "", "buried")))
                .setAttribute("role", "radiogroup")
                .setAttribute("aria-label", "It lies");
        lies = Dom.el("div", "fld fact", Dom.text("span", "k", "It lies"), ways, note);
        picker.addAttachListener(e -> mark());
    }

    private static Element radio(String group, String value, Runnable chosen) {
        Element radio = Dom.el("input", "").setAttribute("type", "radio").setAttribute("name", group);
        radio.setAttribute("value", value);
        radio.addEventListener("change", e -> chosen.run());
        return radio;
    }

    Element pictures() {
        return picker;
    }

    Element lies() {
        return lies;
    }

    void show(FillDraft draft) {
        Optional<TankChoice> tank = draft.tank();
        boolean cylinder = tank.map(TankChoice::isCylinder).orElse(false);
        Dom.show(lies, !cylinder);
        Dom.retext(note, draft.isStartingValue("PLACEMENT") ? "starting value" : "");
        String now = tank.map(TankChoice::name).orElse("") + draft.isBuried();
        if (!now.equals(shown)) {
            shown = now;
            tanks.forEach((each, radio) -> set(radio, tank.equals(Optional.of(each))));
            set(above, !draft.isBuried());
            set(buried, draft.isBuried());
            mark();
        }
    }

    private static void set(Element radio, boolean on) {
        radio.setAttribute("data-chosen", on);
    }

    /** Every radio is told, since the browser unsets its neighbours without saying so. */
    private void mark() {
        tanks.values().forEach(TankPicker::tell);
        tell(above);
        tell(buried);
    }

    private static void tell(Element radio) {
        radio.executeJs("this.checked = $0", radio.hasAttribute("data-chosen"));
    }
}
