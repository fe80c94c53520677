package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.ApplianceEntry;
import longrun.draft.entry.DraftValue;
import longrun.plan.choice.ApplianceKind;
import longrun.ui.field.AnswerField;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;
import longrun.words.IsolatedName;
import longrun.words.Names;

/** The fields of one appliance, each made as its entry is asked. */
final class ApplianceFields {

    private final HousePage page;
    private final FieldList fields;
    private final String at;

    /** @param at JSON pointer of the appliance */
    ApplianceFields(HousePage page, FieldList fields, String at) {
        this.page = page;
        this.fields = fields;
        this.at = at;
    }

    /** The fields of a group in their order. */
    Element[] listAll(ApplianceEntry.Group group) {
        return ApplianceEntry.listAll(group).stream()
                .map(e -> make(e).element())
                .toArray(Element[]::new);
    }

    /** The field of an entry. */
    Field make(ApplianceEntry entry) {
        String pointer = at + "/" + entry.entry();
        Field field = switch (entry.asked()) {
            case KIND -> new ChoiceField(page, pointer, entry.label(), "I don\u2019t know", ApplianceFields::kinds);
            case SECTION -> new ChoiceField(page, pointer, entry.label(), "not entered yet", this::sections);
            case ROOM -> new ChoiceField(page, pointer, entry.label(), "not entered yet", this::rooms);
            case WORDS -> new WordsField(page, pointer, entry.label(), entry.hint());
            case CHOICE -> AnswerField.of(page, pointer, entry.label(), entry.choices());
            case YES_NO -> AnswerField.yesNo(page, pointer, entry.label());
            case HEAT, PRESSURE, HEIGHT, DISTANCE ->
                quantity(pointer, entry, entry.asked().findShown().orElseThrow());
        };
        return fields.add(field);
    }

    private Field quantity(String pointer, ApplianceEntry entry, DisplayUnits<?> shown) {
        return new QuantityField<>(page, pointer, entry.label(), entry.hint(), shown, true, entry.none());
    }

    private static Map<String, String> kinds() {
        Map<String, String> out = new LinkedHashMap<>();
        for (ApplianceKind each : ApplianceKind.values()) {
            out.put(each.written(), Names.capital(each.label()));
        }
        return out;
    }

    private Map<String, String> sections() {
        Map<String, String> out = new LinkedHashMap<>();
        for (DraftValue s : page.session().at("/sections")) {
            String id = s.textOf("id");
            String name = s.textOf("name");
            if (!id.isEmpty()) {
                out.put(id, name.isEmpty() ? id : IsolatedName.of(id) + ", " + IsolatedName.of(name));
            }
        }
        return out;
    }

    private Map<String, String> rooms() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("none", "it stands outdoors");
        for (DraftValue r : page.session().at("/rooms")) {
            String id = r.textOf("id");
            String name = r.textOf("name");
            if (!id.isEmpty()) {
                out.put(id, name.isBlank() ? id : name);
            }
        }
        return out;
    }
}
