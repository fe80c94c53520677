package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.holdpoint.HoldPoint;
import longrun.holdpoint.HoldPoints;
import longrun.ui.field.AnswerField;
import longrun.ui.field.DateField;
import longrun.ui.field.FieldList;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.HouseFinding;
import longrun.ui.place.HousePage;
import longrun.words.Sentence;

/** One point at which work stops: what is looked at, what is open for it, and what was recorded. */
final class PointBlock {

    private final HousePage desk;
    private final FieldList fields;
    private final HoldPoint point;
    private final Element open = Dom.el("div", "point-open");
    private final Element entries = Dom.el("div", "point-entries");
    private final Element record = Dom.button("act", "Record this point");
    private final Element recorded = Dom.text("p", "verdict", "").setAttribute("role", "status");
    private final Element element;
    private List<Finding> openShown = List.of();
    private String drawn = "?";

    PointBlock(HousePage desk, FieldList fields, HoldPoint point, Runnable begin) {
        this.desk = desk;
        this.fields = fields;
        this.point = point;
        record.setAttribute("aria-label", "Record this point: " + point.title());
        record.addEventListener("click", e -> begin.run());
        element = Dom.el(
                "li",
                "block point",
                Dom.el(
                        "div",
                        "point-what",
                        Dom.text("h4", "", point.title()),
                        Dom.text("p", "", point.look() + " Looked at by " + point.who() + "."),
                        open),
                Dom.el("div", "point-said", recorded, record),
                entries);
    }

    Element element() {
        return element;
    }

    /**
     * Shows the point.
     *
     * @param at pointer of what is recorded of it; empty where nothing is
     * @return whether its fields are new
     */
    boolean show(HoldPoints.State state, String at) {
        Dom.retext(recorded, state.recorded());
        Dom.setClass(recorded, "caut", state.record() == HoldPoints.Record.REASON_MISSING);
        if (!state.open().equals(openShown) || drawn.equals("?")) {
            openShown = state.open();
            drawOpen();
        }
        String now = at + " " + (state.inTheWay() > 0);
        if (now.equals(drawn)) {
            return false;
        }
        drawn = now;
        drawEntries(at, state.inTheWay() > 0);
        return true;
    }

    private void drawOpen() {
        open.removeAllChildren();
        List<Finding> told =
                openShown.stream().filter(f -> f.severity() != Severity.NOTE).toList();
        told.forEach(f -> open.appendChild(HouseFinding.of(f, desk)));
        List<Finding> asked =
                openShown.stream().filter(f -> f.severity() == Severity.NOTE).toList();
        if (!asked.isEmpty()) {
            Element list = Dom.el("ul", "");
            asked.forEach(f -> {
                Element go = Dom.button("ask go", "go to the entry");
                String words = Sentence.of(f.ask().orElse(f.found()));
                go.setAttribute("aria-label", "go to the entry: " + words);
                go.addEventListener("click", e -> desk.goTo(f.field()));
                list.appendChild(Dom.el("li", "", Dom.words(words + " "), go));
            });
            open.appendChild(Dom.el(
                    "details",
                    "",
                    Dom.text(
                            "summary",
                            "",
                            asked.size() == 1
                                    ? "1 question is open for it"
                                    : asked.size() + " questions are open for it"),
                    list));
        }
    }

    private void drawEntries(String at, boolean reasonNeeded) {
        entries.removeAllChildren();
        Dom.show(record, at.isEmpty());
        if (at.isEmpty()) {
            return;
        }
        fields.removeBelow(at);
        Element grid = Dom.el("div", "grid");
        grid.appendChild(
                fields.add(AnswerField.yesNo(desk, at + "/done", "Is it done?")).element(),
                fields.add(new WordsField(desk, at + "/measured", "Found or measured", ""))
                        .element(),
                fields.add(new WordsField(desk, at + "/who", "Done by", "Name and licence."))
                        .element(),
                fields.add(new DateField(desk, at + "/date", "On", "Such as Sep 1 2026, or 2026-09-01."))
                        .element());
        if (reasonNeeded) {
            grid.appendChild(fields.add(new WordsField(
                            desk,
                            at + "/reason",
                            "Reason for going on over what must be mended",
                            "It prints with the point. Without it the point is not taken as done."))
                    .element());
        }
        Element back = Dom.button("ask", "take the record back");
        back.setAttribute("aria-label", "take the record back: " + point.title());
        back.addEventListener("click", e -> desk.session().remove(at));
        entries.appendChild(grid, back);
    }
}
