package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.words.FindingWords;

/** A finding: a sentence led by its word and its shape; its rule stands only under where from. */
public final class FindingLine {

    private FindingLine() {}

    /** @param mendedAt id of the field that mends it, where it is on this page */
    public static Element of(Finding f, Optional<String> mendedAt) {
        return of(f, "", mendedAt);
    }

    /**
     * A finding that says where it stands.
     *
     * @param where what stands before its sentence, such as "Line B: "; empty for nothing
     * @param mendedAt id of the field that mends it, where it is on this page
     */
    public static Element of(Finding f, String where, Optional<String> mendedAt) {
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
        mendedAt.ifPresent(id -> line.appendChild(
                Dom.words(" "),
                Dom.button("ask", "go to the entry")
                        .setAttribute("data-do", "go")
                        .setAttribute("data-to", id)));
        return line.appendChild(from);
    }

    /** A sentence under its place, without a rule behind it. */
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

    /** The shape that goes with a severity. */
    public static Element shape(Severity severity) {
        String inside = switch (severity) {
            case MUST_FIX -> "<rect x='1' y='1' width='12' height='12' fill='currentColor'/>";
            case CAUTION -> "<path d='M7 1L13.5 13H.5Z' fill='currentColor'/>";
            case NOTE -> "<circle cx='7' cy='7' r='5.5' fill='none' stroke='currentColor' stroke-width='2'/>";
        };
        return Dom.drawing("<svg viewBox='0 0 14 14' width='14' height='14' aria-hidden='true'>" + inside + "</svg>");
    }
}
