package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.DraftValue;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import org.jspecify.annotations.Nullable;

/** A question with a few answers, all of them visible; "I don't know" is one of them. */
public final class AnswerField implements Field {

    private final HousePage page;
    private final String pointer;
    private final Element group;
    private final Map<DraftValue, Element> radios = new LinkedHashMap<>();
    private @Nullable DraftValue shown;

    private AnswerField(HousePage page, String pointer, String label, Map<DraftValue, String> answers) {
        this.page = page;
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
        // When a page is shown again the browser makes new elements, which are not checked.
        group.addAttachListener(e -> mark());
    }

    /** A question answered by no, yes or not known. */
    public static AnswerField yesNo(HousePage page, String pointer, String label) {
        Map<DraftValue, String> answers = new LinkedHashMap<>();
        answers.put(DraftValue.NO, "no");
        answers.put(DraftValue.YES, "yes");
        answers.put(DraftValue.NOTHING, "I don\u2019t know");
        return new AnswerField(page, pointer, label, answers);
    }

    /**
     * A question with its own answers.
     *
     * @param answers the words shown, by the text stored; "I don't know" is added
     */
    public static AnswerField of(HousePage page, String pointer, String label, Map<String, String> answers) {
        Map<DraftValue, String> all = new LinkedHashMap<>();
        answers.forEach((value, words) -> all.put(DraftValue.text(value), words));
        all.put(DraftValue.NOTHING, "I don\u2019t know");
        return new AnswerField(page, pointer, label, all);
    }

    /** Takes an answer that the browser reports. */
    public void chosen(DraftValue value) {
        shown = null; // the browser shows the choice already
        if (value.isNothing()) {
            page.session().remove(pointer);
        } else if (value.isYesOrNo()) {
            page.session().choose(pointer, value.isYes());
        } else {
            page.session().choose(pointer, value.text());
        }
    }

    @Override
    public void show(boolean write) {
        DraftValue stored = page.session().at(pointer);
        DraftValue now = stored.isNothing() ? DraftValue.NOTHING : stored;
        if (!now.equals(shown)) {
            shown = now;
            mark();
        }
    }

    private void mark() {
        radios.forEach((value, radio) -> {
            boolean on = value.equals(shown);
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
