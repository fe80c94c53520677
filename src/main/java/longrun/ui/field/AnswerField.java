package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.Entered;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import org.jspecify.annotations.Nullable;

/** A question of a few answers, all in sight; not knowing is one of them. */
public final class AnswerField implements Field {

    private final HousePage desk;
    private final String pointer;
    private final Element group;
    private final Map<Entered, Element> radios = new LinkedHashMap<>();
    private @Nullable Entered standing;

    private AnswerField(HousePage desk, String pointer, String label, Map<Entered, String> answers) {
        this.desk = desk;
        this.pointer = pointer;
        String id = Field.id(pointer);
        Element row = Dom.el("div", "ans");
        answers.forEach((value, words) -> {
            Element radio = Dom.el("input", "").setAttribute("type", "radio").setAttribute("name", id);
            radio.addEventListener("change", e -> chosen(value));
            row.appendChild(Dom.el("label", "", radio, Dom.text("span", "", words)));
            radios.put(value, radio);
        });
        group = Dom.el("fieldset", "fld fact-row few", Dom.text("legend", "lab", label), row)
                .setAttribute("id", id);
        // A place gone back to is made anew in the browser, without its marks.
        group.addAttachListener(e -> mark());
    }

    public static AnswerField yesNo(HousePage desk, String pointer, String label) {
        Map<Entered, String> answers = new LinkedHashMap<>();
        answers.put(Entered.NO, "no");
        answers.put(Entered.YES, "yes");
        answers.put(Entered.NOTHING, "I don\u2019t know");
        return new AnswerField(desk, pointer, label, answers);
    }

    /** @param answers by the text stored; not knowing is added */
    public static AnswerField of(HousePage desk, String pointer, String label, Map<String, String> answers) {
        Map<Entered, String> all = new LinkedHashMap<>();
        answers.forEach((value, words) -> all.put(Entered.text(value), words));
        all.put(Entered.NOTHING, "I don\u2019t know");
        return new AnswerField(desk, pointer, label, all);
    }

    public void chosen(Entered value) {
        standing = null; // the browser has moved its mark already
        if (value.isNothing()) {
            desk.session().remove(pointer);
        } else if (value.isYesOrNo()) {
            desk.session().choose(pointer, value.isYes());
        } else {
            desk.session().choose(pointer, value.text());
        }
    }

    @Override
    public void show(boolean write) {
        Entered stored = desk.session().at(pointer);
        Entered now = stored.isNothing() ? Entered.NOTHING : stored;
        if (!now.equals(standing)) {
            standing = now;
            mark();
        }
    }

    private void mark() {
        radios.forEach((value, radio) -> {
            boolean on = value.equals(standing);
            radio.executeJs("this.checked = $0", on);
            radio.setAttribute("data-chosen", on);
        });
    }

    @Override
    public String pointer() {
        return pointer;
    }

    @Override
    public Element element() {
        return group;
    }

    @Override
    public Element target() {
        return radios.values().iterator().next();
    }
}
