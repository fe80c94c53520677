package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import longrun.ui.field.AnswerField;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.FindingList;
import longrun.ui.place.HousePage;

/** The valve that shuts the whole house off. */
final class MainShutoffEditor implements PartsEditor {

    static final String AT = "/site/mainShutoff";

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final FindingList finds;
    private final Element element;

    MainShutoffEditor(HousePage desk) {
        this.desk = desk;
        finds = new FindingList(desk);
        element = Dom.el(
                "div",
                "bench",
                Dom.text("p", "lede", "One valve that shuts the whole house off, where anyone finds it from outside."),
                Dom.el(
                        "div",
                        "grid",
                        fields.add(AnswerField.yesNo(desk, AT + "/outdoors", "It is outdoors"))
                                .element(),
                        fields.add(AnswerField.yesNo(desk, AT + "/reachable", "A hand can reach it"))
                                .element()),
                finds.element());
    }

    @Override
    public String pointer() {
        return AT;
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
        fields.show(write);
        finds.show(desk.session().findings().stream()
                .filter(f -> f.field().startsWith(AT))
                .toList());
    }
}
