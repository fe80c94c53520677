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

/**
 * One hold point: what is checked and entered, folded except for the point that comes next, what must be fixed
 * for it, and what was recorded.
 */
final class PointBlock {

    private final HousePage desk;
    private final FieldList fields;
    private final HoldPoint point;
    private final Element open = Dom.el("div", "point-open");
    private final Element summary = Dom.el("summary", "");
    private final Element asked = Dom.el("ul", "");
    private final Element look;
    private boolean next;
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
        look = Dom.el("details", "point-look", summary, Dom.text("p", "", point.look()), asked);
        element = Dom.el(
                "li",
                "block point",
                Dom.el("div", "point-what", Dom.text("h4", "", point.title()), look, open),
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
     * @param isNext whether it is the next to be looked at, so that it stands open
     * @return whether its fields are new
     */
    boolean show(HoldPoints.State state, String at, boolean isNext) {
        if (isNext != next) {
            next = isNext;
            look.setAttribute("open", isNext);
        }
        Dom.retext(recorded, state.recorded());
        Dom.setClass(recorded, "vh", at.isEmpty());
        Dom.setClass(recorded, "caut", state.record() == HoldPoints.Record.REASON_MISSING);
        if (!state.open().equals(openShown) || drawn.equals("?")) {
            openShown = state.open();
            drawOpen();
        }
        String now = at + " " + (state.mustFix() > 0);
        if (now.equals(drawn)) {
            return false;
        }
        drawn = now;
        drawEntries(at, state.mustFix() > 0);
        return true;
    }

    private void drawOpen() {
        open.removeAllChildren();
        List<Finding> told =
                openShown.stream().filter(f -> f.severity() != Severity.NOTE).toList();
        told.forEach(f -> open.appendChild(HouseFinding.of(f, desk)));
        List<Finding> questions =
                openShown.stream().filter(f -> f.severity() == Severity.NOTE).toList();
        asked.removeAllChildren();
        questions.forEach(f -> {
            Element go = Dom.button("ask go", "go to the entry");
            String words = Sentence.of(f.ask().orElse(f.found()));
            go.setAttribute("aria-label", "go to the entry: " + words);
            go.addEventListener("click", e -> desk.goTo(f.field()));
            asked.appendChild(Dom.el("li", "", Dom.words(words + " "), go));
        });
        Dom.show(asked, !questions.isEmpty());
        Dom.retext(
                summary,
                "Checked by " + point.who()
                        + switch (questions.size()) {
                            case 0 -> "";
                            case 1 -> "; 1 question open";
                            default -> "; " + questions.size() + " questions open";
                        });
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
                            "Reason for going on with a must-fix finding open",
                            "It prints with the point. Without it the point is not taken as done."))
                    .element());
        }
        Element back = Dom.button("ask", "take the record back");
        back.setAttribute("aria-label", "take the record back: " + point.title());
        back.addEventListener("click", e -> desk.session().remove(at));
        entries.appendChild(grid, back);
    }
}
