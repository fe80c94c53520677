package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.words.FindingWords;

/** A finding as a sentence, led by the name and shape of its severity; its rule is shown only under "where from?". */
public final class FindingLine {

    private FindingLine() {}

    /**
     * A finding.
     *
     * @param fixedAt id of the field where it is put right, if that is on this page
     */
    public static Element of(Finding f, Optional<String> fixedAt) {
        return of(f, "", fixedAt);
    }

    /**
     * A finding that begins with its place.
     *
     * @param where the words before its sentence, such as "Line B: "; empty for none
     * @param fixedAt id of the field where it is put right, if that is on this page
     */
    public static Element of(Finding f, String where, Optional<String> fixedAt) {
        String sentence = where + FindingWords.told(f);
        String reference = f.reference() + (f.edition().isBlank() ? "" : ", " + f.edition());
        Element from = Dom.el(
                "span",
                "s q",
                Dom.words(" " + f.rule() + "; " + reference + "; held as "
                        + f.confidence().written() + ". "),
                CheckedLink.element());
        Dom.show(from.setAttribute("data-more", ""), false);
        Element ask = Dom.button("ask", "where from?")
                .setAttribute("data-do", "unfold")
                .setAttribute("aria-expanded", "false");
        Element line = sentence(f.severity(), sentence).appendChild(Dom.words(" "), ask);
        fixedAt.ifPresent(id -> line.appendChild(
                Dom.words(" "),
                Dom.button("ask", "go to the entry")
                        .setAttribute("data-do", "go")
                        .setAttribute("data-to", id)));
        return line.appendChild(from);
    }

    /** A sentence with a severity, without a rule. */
    public static Element sentence(Severity severity, String sentence) {
        String classes = switch (severity) {
            case MUST_FIX -> "find must";
            case CAUTION -> "find caut";
            case NOTE -> "find quest";
        };
        String word = switch (severity) {
            case MUST_FIX -> "Must fix";
            case CAUTION -> "Caution";
            case NOTE -> "Question";
        };
        return Dom.el("div", classes, shape(severity), Dom.text("b", "", word), Dom.words(" " + sentence));
    }

    /** The shape of a severity. */
    public static Element shape(Severity severity) {
        String inside = switch (severity) {
            case MUST_FIX -> "<rect x='1' y='1' width='12' height='12' fill='currentColor'/>";
            case CAUTION -> "<path d='M7 1L13.5 13H.5Z' fill='currentColor'/>";
            case NOTE -> "<circle cx='7' cy='7' r='5.5' fill='none' stroke='currentColor' stroke-width='2'/>";
        };
        return Dom.drawing("<svg viewBox='0 0 14 14' width='14' height='14' aria-hidden='true'>" + inside + "</svg>");
    }
}
