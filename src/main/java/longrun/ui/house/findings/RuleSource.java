package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanation.Section;
import longrun.ui.frame.CheckedLink;
import longrun.ui.frame.Dom;
import longrun.words.CodeNames;
import longrun.words.Names;
import longrun.words.Sentence;

/** Where a rule is from: publication and section, code by code, and how well each is held. */
final class RuleSource {

    private RuleSource() {}

    /** The sections alone, each named once. */
    static Element lines(Explanation e) {
        List<String> sources =
                e.sections().stream().map(Section::source).distinct().toList();
        return Dom.text("p", "s q from-line", Sentence.of("From " + String.join("; ", sources)));
    }

    /** What each code wants, in which section, behind a question. */
    static Ask ask(Explanation e) {
        Element told = Dom.el("ul", "from-line rule-source");
        Dom.show(told, false);
        Element ask = Dom.button("ask", "where from?")
                .setAttribute("aria-expanded", "false")
                .setAttribute("aria-label", "where from? " + e.title());
        ask.addEventListener("click", click -> {
            if (told.getChildCount() == 0) {
                e.sections().forEach(s -> told.appendChild(Dom.text("li", "s q", words(s))));
                told.appendChild(Dom.el("li", "s q", CheckedLink.element()));
            }
            boolean open = told.hasAttribute("hidden");
            Dom.show(told, open);
            ask.setAttribute("aria-expanded", String.valueOf(open));
        });
        return new Ask(ask, told);
    }

    /**
     * A question and what it unfolds.
     *
     * @param ask unfolds it
     * @param told what it then shows
     */
    record Ask(Element ask, Element told) {}

    private static String words(Section s) {
        String code = s.code()
                .map(c -> Names.capital(CodeNames.of(c.written())) + ": ")
                .orElse("");
        return code + Sentence.of(Names.capital(s.required())) + " "
                + Sentence.of(s.source() + "; held as " + s.confidence().written());
    }
}
