package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.UsualValves;
import longrun.ui.field.BlockList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** The draws of a day and the valves of the water side, each a list of blocks. */
final class WaterLists {

    private static final String DRAWS = "/use/hotWater/draws";
    private static final String VALVES = "/use/hotWater/valves";
    private final HousePage desk;
    private final FieldList fields;
    private final BlockList draws;
    private final BlockList valves;
    private final Element usual = Dom.button("ask", "Take the valves of the drawing");

    WaterLists(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        draws = new BlockList(desk, fields, DRAWS, "Add a draw", "Remove this draw", this::draw).inRows();
        valves = new BlockList(desk, fields, VALVES, "Add a valve", "Remove this valve", this::valve).inRows();
        usual.addEventListener("click", e -> takeUsual());
    }

    Element draws() {
        return Dom.el("div", "", draws.blocks(), draws.adds());
    }

    Element valves() {
        return Dom.el("div", "", valves.blocks(), valves.adds(), Dom.el("p", "acts", usual));
    }

    /** Draws blocks anew where their number changed; true where it did. */
    boolean draw() {
        Dom.show(usual, desk.session().at(VALVES).isEmpty());
        boolean fresh = draws.draw();
        return valves.draw() || fresh;
    }

    /** Writes the valves as the drawing has them: to be looked at in the house before they are relied upon. */
    void takeUsual() {
        desk.session().change(UsualValves::write);
    }

    private Element[] draw(String at) {
        return new Element[] {
            fields.add(new WordsField(desk, at + "/name", "What is drawn", "Such as evening showers."))
                    .element(),
            fields.add(new WordsField(desk, at + "/start", "From", "Hour and minute, such as 19:00."))
                    .element(),
            fields.add(new QuantityField<>(
                            desk, at + "/lasts", "For", "Such as 20 min.", DisplayUnits.MINUTES, false, ""))
                    .element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/flow",
                            "At a flow of",
                            "Mixed, at the fixture; a shower head 2 to 2.5 gal/min.",
                            DisplayUnits.FLOW,
                            false,
                            ""))
                    .element()
        };
    }

    private Element[] valve(String at) {
        Map<String, String> what = new LinkedHashMap<>();
        what.put("mixing", "mixing valve");
        what.put("three-way", "three-way valve");
        what.put("shutoff", "shutoff valve");
        what.put("check", "check valve");
        what.put("relief", "relief valve");
        what.put("expansion-tank", "expansion tank");
        Map<String, String> after = new LinkedHashMap<>();
        after.put("cold", "the cold main");
        after.put("storage", "the storage heater, straight on it");
        after.put("on-demand", "the on-demand heater, straight on it");
        after.put("three-way", "a three-way valve");
        after.put("shutoff", "a shutoff valve");
        after.put("check", "a check valve");
        Map<String, String> around = new LinkedHashMap<>();
        around.put("storage", "the storage heater");
        around.put("on-demand", "the on-demand heater");
        around.put("mixing", "the mixing valve");
        around.put("relief", "a relief valve");
        return new Element[] {
            fields.add(new ChoiceField(desk, at + "/what", "What it is", "not chosen yet", () -> what))
                    .element(),
            fields.add(new ChoiceField(desk, at + "/after", "It comes after", "not known", () -> after))
                    .element(),
            fields.add(new ChoiceField(desk, at + "/around", "It leads round", "nothing", () -> around))
                    .element()
        };
    }
}
