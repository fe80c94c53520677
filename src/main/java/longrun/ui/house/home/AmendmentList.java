package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.ui.field.BlockList;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** Local changes of single limits, a block each. */
final class AmendmentList {

    private static final String AMENDMENTS = "/code/amendments";
    private static final Map<String, String> RULES = new LinkedHashMap<>();

    static {
        RULES.put("shutoff-within-reach", "how far an appliance\u2019s shutoff may be");
        RULES.put("connector-length", "how long a flexible connector may be");
        RULES.put("trap-nipple-length", "how long a sediment trap\u2019s nipple must be");
        RULES.put("regulator-vent-opening", "how far a regulator\u2019s vent must be from an opening below it");
        RULES.put("regulator-vent-ignition", "how far a regulator\u2019s vent must be from a spark or flame");
        RULES.put("regulator-vent-intake", "how far a regulator\u2019s vent must be from an air intake");
        RULES.put("tank-to-building", "how far the tank must be from a building");
        RULES.put("tank-to-property-line", "how far the tank must be from the property line");
        RULES.put("pipe-burial-depth", "how deep pipe must be buried");
        RULES.put("vent-terminal", "how far a vent\u2019s end must be from what is near it");
    }

    private final HousePage desk;
    private final FieldList fields;
    private final BlockList list;
    private final Element element;

    AmendmentList(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
        list = new BlockList(
                desk, fields, AMENDMENTS, "Add a local change of a limit", "Remove this local change", this::block);
        element = Dom.el("div", "", list.blocks(), list.adds());
    }

    Element element() {
        return element;
    }

    /** Draws the blocks anew where their number changed; true where it did. */
    boolean draw() {
        return list.draw();
    }

    private Element[] block(String at) {
        return new Element[] {
            fields.add(new ChoiceField(desk, at + "/rule", "It changes", "not chosen yet", () -> RULES))
                    .element(),
            fields.add(new QuantityField<>(
                            desk,
                            at + "/limit",
                            "To",
                            "A looser limit holds too, and is noted.",
                            DisplayUnits.LENGTH,
                            false,
                            ""))
                    .element(),
            fields.add(new WordsField(desk, at + "/source", "By", "Such as: county ordinance 12.4."))
                    .element()
        };
    }
}
