package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.NewItem;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.rules.Answers;
import longrun.ui.field.DateField;
import longrun.ui.field.FieldList;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.IsolatedName;
import longrun.words.Names;
import longrun.words.Sentence;

/** What whoever decides has said of a finding: accepted or refused, who, and when. */
public final class FindingReply {

    private static final String ANSWERS = "/answers";
    private static final String MISSING = "entry-missing";

    /** So many answers have their fields at once; of more, the one selected. */
    static final int FEW = 12;

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
        Element whoAndWhen = Dom.el("div", "reply-given");
        element.appendChild(whoAndWhen);
        if (desk.session().at(ANSWERS).size() > FEW) {
            asText(whoAndWhen, at);
        } else {
            asFields(whoAndWhen, at);
        }
        element.appendChild(button("take the answer back", () -> desk.session().remove(at)));
    }

    /** A line of text that has its fields once it is selected. */
    private void asText(Element whoAndWhen, String at) {
        String who = desk.session().text(at + "/who");
        String date = desk.session().text(at + "/date");
        Element text = Dom.text(
                        "span",
                        "given",
                        (who.isEmpty() ? "by whom is not entered" : "by " + IsolatedName.of(who))
                                + (date.isEmpty() ? ", no date" : ", " + date))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "button");
        whoAndWhen.appendChild(text);
        Runnable inHand = () -> {
            whoAndWhen.removeAllChildren();
            int before = fields.count();
            asFields(whoAndWhen, at);
            fields.showFrom(before);
            fields.focus(at + "/who");
        };
        text.addEventListener("focus", e -> inHand.run());
        text.addEventListener("click", e -> inHand.run());
    }

    private void asFields(Element whoAndWhen, String at) {
        whoAndWhen.appendChild(
                fields.add(new WordsField(desk, at + "/who", "by whom", "Such as: inspector."))
                        .element(),
                fields.add(new DateField(desk, at + "/date", "on", "Such as Sep 1 2026, or 2026-09-01."))
                        .element());
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
                        NewItem.of("rule", finding.rule())
                                .and("at", finding.at())
                                .and("says", says));
        fields.focus(ANSWERS + "/" + index + "/who");
    }

    /** The answer to a finding, the last where there are several; -1 where there is none. */
    static int find(DraftValue answers, Finding finding) {
        int found = -1;
        for (int i = 0; i < answers.size(); i++) {
            DraftValue a = answers.get(i);
            if (a.textOf("rule").equals(finding.rule()) && a.textOf("at").equals(finding.at())) {
                found = i;
            }
        }
        return found;
    }
}
