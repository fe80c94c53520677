package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import longrun.finding.Finding;
import longrun.finding.Severity;

/** A finding: a sentence led by its word and its shape; its rule stands only under where from. */
public final class FindingLine {

    private FindingLine() {}

    public static Element of(Finding f) {
        String sentence = f.found() + (f.remedy().isBlank() ? "" : " " + f.remedy());
        String reference = f.reference() + (f.edition().isBlank() ? "" : ", " + f.edition());
        Element from = Dom.el(
                "span",
                "s q",
                Dom.words(" " + f.rule() + "; " + reference + "; held as "
                        + f.confidence().written() + "."));
        Dom.show(from, false);
        Element ask = Dom.button("ask", "where from?").setAttribute("aria-expanded", "false");
        ask.addEventListener("click", e -> {
            boolean open = from.hasAttribute("hidden");
            Dom.show(from, open);
            ask.setAttribute("aria-expanded", String.valueOf(open));
        });
        return sentence(f.severity(), sentence).appendChild(Dom.words(" "), ask, from);
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

    private static Element shape(Severity severity) {
        String inside = switch (severity) {
            case MUST_FIX -> "<rect x='1' y='1' width='12' height='12' fill='currentColor'/>";
            case CAUTION -> "<path d='M7 1L13.5 13H.5Z' fill='currentColor'/>";
            case NOTE -> "<circle cx='7' cy='7' r='5.5' fill='none' stroke='currentColor' stroke-width='2'/>";
        };
        return Dom.drawing("<svg viewBox='0 0 14 14' width='14' height='14' aria-hidden='true'>" + inside + "</svg>");
    }
}
