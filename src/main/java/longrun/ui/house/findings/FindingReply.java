package longrun.ui.house.findings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.vaadin.flow.dom.Element;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.Answers;
import longrun.ui.field.DateField;
import longrun.ui.field.FieldList;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Names;
import longrun.words.Sentence;

/** What whoever decides has said of a finding: accepted or refused, who, and when. */
public final class FindingReply {

    private static final String ANSWERS = "/answers";
    private static final String MISSING = "entry-missing";

    private final HousePage desk;
    private final FieldList fields;
    private final Finding finding;
    private final Element element = Dom.el("div", "reply");

    private FindingReply(HousePage desk, FieldList fields, Finding finding) {
        this.desk = desk;
        this.fields = fields;
        this.finding = finding;
    }

    static Element of(HousePage desk, FieldList fields, Finding finding) {
        FindingReply reply = new FindingReply(desk, fields, finding);
        reply.draw();
        return reply.element;
    }

    private void draw() {
        boolean never = Answers.NEVER_ACCEPTED.contains(finding.rule());
        int index = find(desk.session().at(ANSWERS), finding);
        if (index < 0 && !isForADecision(finding)) {
            return;
        }
        if (never) {
            element.appendChild(Dom.text("span", "", "Nobody can accept this one."));
        }
        if (index < 0) {
            element.appendChild(Dom.text("span", "", "Has whoever decides answered?"));
            if (!never) {
                element.appendChild(button("accepted", () -> answer("accepted")));
            }
            element.appendChild(button("refused", () -> answer("refused")));
            return;
        }
        String at = ANSWERS + "/" + index;
        String says = desk.session().text(at + "/says");
        element.appendChild(Dom.text("b", "", Names.capital(says.isEmpty() ? "answered" : says)));
        element.appendChild(fields.add(new WordsField(desk, at + "/who", "by whom", "Such as: inspector."))
                .element());
        element.appendChild(fields.add(new DateField(desk, at + "/date", "on", "Such as Sep 1 2026, or 2026-09-01."))
                .element());
        element.appendChild(button("take the answer back", () -> desk.session().remove(at)));
    }

    /**
     * Whether somebody can accept or refuse it: what is wrong or doubtful, what another code asks, and what only an
     * inspector decides. What is merely not known is answered at its field.
     */
    public static boolean isForADecision(Finding f) {
        boolean told = f.severity() != Severity.NOTE || f.ask().isEmpty();
        boolean decided = f.askWhom().filter(w -> w == AskWhom.INSPECTOR).isPresent();
        return !f.rule().equals(MISSING) && (told || decided);
    }

    private Element button(String says, Runnable does) {
        Element b = Dom.button("ask", says).setAttribute("aria-label", says + ": " + Sentence.of(finding.found()));
        b.addEventListener("click", e -> does.run());
        return b;
    }

    private void answer(String says) {
        int index = desk.session()
                .add(
                        ANSWERS,
                        JsonNodeFactory.instance
                                .objectNode()
                                .put("rule", finding.rule())
                                .put("at", finding.at())
                                .put("says", says));
        fields.focus(ANSWERS + "/" + index + "/who");
    }

    /** The answer to a finding, the last where there are several; -1 where there is none. */
    static int find(JsonNode answers, Finding finding) {
        int found = -1;
        for (int i = 0; i < answers.size(); i++) {
            JsonNode a = answers.get(i);
            if (a.path("rule").asText().equals(finding.rule())
                    && a.path("at").asText().equals(finding.at())) {
                found = i;
            }
        }
        return found;
    }
}
