package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import longrun.ui.field.FieldList;

/** What is selected among the connections: an appliance, a regulator, or the main shutoff. */
interface PartsEditor {

    /** Where it stands in the draft. */
    String pointer();

    Element element();

    FieldList fields();

    /** @param write whether the text of fields is written */
    void show(boolean write);
}
