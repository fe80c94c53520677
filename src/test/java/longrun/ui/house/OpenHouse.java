package longrun.ui.house;

import com.vaadin.flow.component.UI;
import java.util.Map;
import java.util.Optional;
import longrun.plan.json.PlanReader;
import longrun.store.DraftStore;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Entry;
import longrun.ui.house.appliances.AppliancesPlace;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;

/** One house, begun empty, open in a page without a browser. */
public abstract class OpenHouse extends OpenHouses {

    @Autowired
    public DraftStore store;

    protected long id;

    @BeforeEach
    void begin() {
        id = store.create("", "{\"format\":\"longrun-plan/1\"}").id();
    }

    protected HouseView open(String place) {
        UI.getCurrent().navigate("house/" + id + "/" + place);
        HouseView page = (HouseView) UI.getCurrent().getCurrentView();
        page.kept("", Map.of(), Optional.empty());
        return page;
    }

    protected static Entry entry(FieldList fields, String pointer) {
        return fields.find(pointer).flatMap(Field::entry).orElseThrow();
    }

    protected static com.fasterxml.jackson.databind.JsonNode tree(String json) {
        try {
            return PlanReader.tree(json);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    protected AppliancesPlace appliances(HouseView page) {
        return (AppliancesPlace) page.placeShown();
    }
}
