package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.sections.MakersTable;
import longrun.draft.sections.TubingDraft;
import longrun.finding.ListWords;
import longrun.plan.json.PlanError;
import longrun.review.Review;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.frame.TextFile;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** One maker's table: its name, its pressures, its cells from a file or pasted, and what it was read as. */
final class TubingBlock {

    private static final int SHOWN_FAULTS = 40;

    private final HousePage desk;
    private final int index;
    private final Entry name;
    private final Element cells = Dom.el("textarea", "in csv").setAttribute("rows", "6");
    private final Element said = Dom.text("p", "said", "").setAttribute("role", "status");
    private final Element faults = Dom.el("ul", "errors");
    private final TubingReadTable read = new TubingReadTable();
    private final Element used = Dom.text("p", "s q", "");
    private final Element remove = Dom.button("ask", "");
    private final Element element;
    private String lastName = "";

    TubingBlock(HousePage desk, FieldList fields, int index, Runnable removed) {
        this.desk = desk;
        this.index = index;
        String at = TubingDraft.at(index);
        String id = Field.id(at);
        name = new Entry(id + "-name", "Name of the table", "in", this::rename);
        name.getElement().setAttribute("data-at", "tubing " + index);
        name.getElement().addEventListener("blur", e -> desk.session().endStep());
        cells.setAttribute("id", id + "-csv")
                .setAttribute("data-at", at + "/csv")
                .setAttribute("spellcheck", "false")
                .setAttribute("aria-describedby", id + "-csv-said")
                .setAttribute("placeholder", "length_ft,13,18\n10,49,129\n20,34,91");
        said.setAttribute("id", id + "-csv-said");
        cells.addPropertyChangeListener("value", "input", e -> {
            if (e.isUserOriginated()) {
                type(String.valueOf(e.getValue()));
            }
        });
        cells.addEventListener("blur", e -> desk.session().endStep());
        TextFile file = new TextFile(id + "-file", ".csv,text/csv,text/plain", this::take);
        remove.addEventListener("click", e -> removed.run());
        element = Dom.el(
                "div",
                "block tubing",
                Dom.el(
                        "div",
                        "grid",
                        Dom.el(
                                "div",
                                "fld",
                                Dom.text("label", "lab", "Name of the table").setAttribute("for", id + "-name"),
                                name.getElement(),
                                name.said()),
                        Dom.el(
                                "div",
                                "fld",
                                Dom.text("label", "lab", "Its cells from a CSV file")
                                        .setAttribute("for", id + "-file"),
                                file.element()),
                        fields.add(pressure(
                                        at + "/inlet", "Inlet pressure", "As its heading says: 11 in w.c., or 2 psi."))
                                .element(),
                        fields.add(pressure(
                                        at + "/drop", "Drop it allows", "As its heading says: 0.5 in w.c., or 1 psi."))
                                .element()),
                Dom.el(
                        "div",
                        "fld",
                        Dom.text("label", "lab", "or its cells, typed or pasted from a spreadsheet")
                                .setAttribute("for", id + "-csv"),
                        cells,
                        said),
                faults,
                read.element(),
                used,
                remove);
    }

    private QuantityField<?> pressure(String pointer, String label, String help) {
        return new QuantityField<>(desk, pointer, label, help, DisplayUnits.APPLIANCE_PRESSURE, false, "");
    }

    Element element() {
        return element;
    }

    Element nameField() {
        return name.getElement();
    }

    String nameText() {
        return name.text();
    }

    Element cellsField() {
        return cells;
    }

    String cellsText() {
        return cells.getProperty("value", "");
    }

    // What a person does.

    void rename(String typed) {
        String was = lastName;
        desk.session().type(TubingDraft.at(index) + "/name", d -> TubingDraft.rename(d, index, was, typed));
    }

    void type(String typed) {
        desk.session().set(TubingDraft.at(index) + "/csv", TubingDraft.csv(typed));
    }

    void take(String fileName, String text, boolean tooLong) {
        if (tooLong) {
            Dom.retext(
                    said, fileName + " was not taken: it is over 1 MiB, and no tubing table is. Nothing was changed.");
            return;
        }
        desk.session().change(d -> TubingDraft.file(d, index, fileName, text));
    }

    // What is shown.

    void show(boolean write) {
        String stored = TubingDraft.name(desk.session().draft(), index);
        String csv = desk.session().text(TubingDraft.at(index) + "/csv");
        lastName = stored.isEmpty() ? lastName : stored;
        if (write) {
            name.write(stored);
            if (!cellsText().equals(csv)) {
                cells.setProperty("value", csv);
            }
        }
        showName();
        MakersTable sheet = MakersTable.of(desk.session().draft(), index);
        showFaults(sheet.faults());
        Dom.retext(said, words(sheet, csv));
        Dom.setClass(said, "bad", !sheet.faults().isEmpty());
        if (sheet.faults().isEmpty()) {
            cells.removeAttribute("aria-invalid");
        } else {
            cells.setAttribute("aria-invalid", "true");
        }
        read.show(sheet.table(), desk.units());
        List<String> users = TubingDraft.users(desk.session().draft(), stored);
        Dom.retext(used, sheet.table().isPresent() ? usedWords(sheet, users) : "");
        String which = stored.isEmpty() ? "this table" : "\u201c" + stored + "\u201d";
        Dom.retext(
                remove,
                "Remove " + which + (users.isEmpty() ? "" : "; " + sections(users) + " back to the code\u2019s table"));
    }

    private static String sections(List<String> users) {
        return users.size() == 1 ? "section " + users.get(0) + " goes" : "sections " + ListWords.all(users) + " go";
    }

    private void showName() {
        Optional<PlanError> error = desk.session().error(TubingDraft.at(index) + "/name");
        if (error.isPresent()) {
            name.wrong(error.get().message());
        } else {
            name.understood("As the maker and the sheet call it; a section names it.");
        }
    }

    private void showFaults(List<String> all) {
        faults.removeAllChildren();
        all.stream().limit(SHOWN_FAULTS).forEach(f -> faults.appendChild(Dom.text("li", "", f)));
        if (all.size() > SHOWN_FAULTS) {
            faults.appendChild(Dom.text("li", "", "and " + (all.size() - SHOWN_FAULTS) + " more"));
        }
    }

    private static String words(MakersTable sheet, String csv) {
        if (csv.isBlank()) {
            return "First line length_ft and the EHD sizes, then a line a length, capacities in thousand Btu/h of propane.";
        }
        if (!sheet.faults().isEmpty()) {
            int n = sheet.faults().size();
            return "Kept as typed, and sizes nothing until " + (n == 1 ? "this cell is" : "these " + n + " cells are")
                    + " mended. Each is named file:row:column.";
        }
        return sheet.missing().isEmpty()
                ? "Kept with the house."
                : "Kept with the house. Before it can size a section it needs " + ListWords.all(sheet.missing()) + ".";
    }

    private String usedWords(MakersTable sheet, List<String> users) {
        if (!sheet.missing().isEmpty()) {
            return "";
        }
        if (!users.isEmpty()) {
            return (users.size() == 1 ? "Section " : "Sections ") + ListWords.all(users)
                    + (users.size() == 1 ? " is" : " are") + " sized by it.";
        }
        boolean fits = desk.session().review().map(r -> fits(r, sheet)).orElse(true);
        return fits
                ? "No section is sized by it yet: choose it at a section of corrugated tubing, under Sized by."
                : "No regulator here is set to this pressure with this drop, so it fits no section: a table sizes only at"
                        + " the pressures in its heading.";
    }

    private static boolean fits(Review review, MakersTable sheet) {
        return review.plan().regulators().stream()
                .anyMatch(r -> r.outlet()
                                .is(p -> p.same(sheet.table().orElseThrow().inlet()))
                        && r.allowedDrop()
                                .is(p -> p.same(sheet.table().orElseThrow().drop())));
    }
}
