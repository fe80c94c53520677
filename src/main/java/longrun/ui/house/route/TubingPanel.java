package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.entry.NewItem;
import longrun.draft.sections.TubingDraft;
import longrun.finding.ListWords;
import longrun.plan.PlanPath;
import longrun.plan.choice.Material;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The makers' tables of this house, folded up until one is asked for. */
final class TubingPanel {

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final List<TubingBlock> tables = new ArrayList<>();
    private final Element summary = Dom.text("summary", "", "");
    private final Element blocks = Dom.el("div", "blocks");
    private final Element said = Dom.text("p", "said", "").setAttribute("role", "status");
    private final Element add = Dom.button("act", "Add a maker\u2019s table");
    private final Element element;

    TubingPanel(HousePage desk) {
        this.desk = desk;
        add.addEventListener("click", e -> add());
        element = Dom.el(
                "details",
                "own-days tubing-tables",
                summary,
                Dom.text(
                        "p",
                        "lede",
                        "Where the brand of corrugated tubing is known, its maker\u2019s table for propane decides; the code\u2019s"
                                + " table stands for any brand. One table is for one inlet pressure and one drop."),
                blocks,
                said,
                Dom.el("div", "acts", add));
    }

    Element element() {
        return element;
    }

    List<TubingBlock> tables() {
        return tables;
    }

    void add() {
        int index = desk.session().add(TubingDraft.TABLES, NewItem.of("material", Material.CSST.written()));
        element.setAttribute("open", true); // so that it is not folded up by going to another place and back
        if (index < tables.size()) {
            FieldList.focus(tables.get(index).nameField());
        }
    }

    void remove(int index) {
        String name = TubingDraft.name(desk.session().draft(), index);
        List<String> users = TubingDraft.users(desk.session().draft(), name);
        desk.session().change(d -> TubingDraft.remove(d, index));
        Dom.retext(
                said,
                (name.isEmpty() ? "The table" : "\u201c" + name + "\u201d") + " is removed"
                        + (users.isEmpty()
                                ? ""
                                : ", and " + (users.size() == 1 ? "section " : "sections ") + ListWords.all(users)
                                        + (users.size() == 1 ? " is" : " are")
                                        + " sized by the code\u2019s table again")
                        + ". Undo brings it back.");
    }

    void show(boolean write) {
        int now = desk.session().at(TubingDraft.TABLES).size();
        boolean fresh = now != tables.size();
        if (fresh) {
            tables.clear();
            fields.clear();
            blocks.removeAllChildren();
            for (int i = 0; i < now; i++) {
                int index = i;
                TubingBlock block = new TubingBlock(desk, fields, i, () -> remove(index));
                tables.add(block);
                blocks.appendChild(block.element());
            }
            Dom.retext(said, "");
        }
        fields.show(write || fresh);
        tables.forEach(t -> t.show(write || fresh));
        Dom.retext(
                summary,
                "A maker\u2019s tubing table"
                        + (now == 0 ? "" : now == 1 ? ": 1 in this house" : ": " + now + " in this house"));
    }

    void focus(String pointer) {
        PlanPath at = PlanPath.of(pointer);
        int index = at.findIndex().orElse(-1);
        String entry = at.length() > 2 ? at.step(2) : "name";
        if (index < 0 || index >= tables.size()) {
            FieldList.focus(add);
        } else if (entry.equals("inlet") || entry.equals("drop")) {
            fields.focus(pointer);
        } else {
            TubingBlock there = tables.get(index);
            FieldList.focus(entry.equals("csv") ? there.cellsField() : there.nameField());
        }
    }

    /** Takes a name that was typed while the program did not answer. */
    void typedBefore(String at, String typed) {
        String[] words = at.split(" ");
        if (words.length == 2 && words[0].equals("tubing") && words[1].matches("[0-9]{1,4}")) {
            int index = Integer.parseInt(words[1]);
            if (index < tables.size()) {
                tables.get(index).rename(typed);
            }
        }
    }

    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>(fields.heard());
        for (int i = 0; i < tables.size(); i++) {
            heard.put(TubingDraft.at(i) + "/csv", tables.get(i).cellsText());
            heard.put("tubing " + i, tables.get(i).nameText());
        }
        return heard;
    }
}
