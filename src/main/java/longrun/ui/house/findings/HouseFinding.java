package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.Locale;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.finding.Answer;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.ui.frame.CheckedLink;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.place.HousePage;
import longrun.words.FindingWords;
import longrun.words.Names;
import longrun.words.Sentence;

/** A finding as a sentence that leads to its field; its rule stands only under where from. */
public final class HouseFinding {

    private HouseFinding() {}

    public static Element of(Finding f, HousePage desk) {
        String words = words(f, desk);
        Element acts = Dom.el("span", "find-acts");
        if (PlaceKind.find(f.field()).isPresent()) {
            Element go = Dom.button("ask go", "go to the entry");
            go.addEventListener("click", e -> desk.goTo(f.field()));
            acts.appendChild(go);
        }
        Element from = Dom.el("span", "s q from-line", Dom.words(from(f) + " "), CheckedLink.element());
        Dom.show(from, false);
        Element ask = Dom.button("ask", "where from?").setAttribute("aria-expanded", "false");
        ask.addEventListener("click", e -> {
            boolean open = from.hasAttribute("hidden");
            Dom.show(from, open);
            ask.setAttribute("aria-expanded", String.valueOf(open));
        });
        Element line = FindingLine.sentence(f.severity(), words);
        if (f.severity() == Severity.NOTE) {
            line.setAttribute("data-asks", OpenQuestions.about(f.field()));
        }
        f.answer().ifPresent(a -> line.appendChild(Dom.text("span", "q", " " + answered(a))));
        line.appendChild(Dom.words(" "), acts.appendChild(ask), from);
        RuleWhy.of(f.rule()).ifPresent(why -> {
            acts.appendChild(why.ask());
            line.appendChild(why.told());
        });
        return line;
    }

    /** The sentence alone, for paper: nothing in it can be pressed. */
    public static Element onPaper(Finding f, HousePage desk) {
        Element line = FindingLine.sentence(f.severity(), words(f, desk)).setAttribute("class", "noted");
        f.answer().ifPresent(a -> line.appendChild(Dom.words(" " + answered(a))));
        return line;
    }

    /** A question is asked; what is wrong is told, with what mends it and what to ask about it. */
    private static String words(Finding f, HousePage desk) {
        String ask = f.ask().map(Sentence::of).orElse("");
        if (f.severity() == Severity.NOTE && !ask.isEmpty()) {
            return ask;
        }
        return called(f, desk) + FindingWords.told(f) + (ask.isEmpty() ? "" : " To ask: " + ask);
    }

    private static String called(Finding f, HousePage desk) {
        if (f.named() || f.at().equals("plan")) {
            return "";
        }
        return desk.session()
                .review()
                .map(r -> Names.of(r, f.at()))
                .filter(name -> !name.isEmpty())
                .map(name -> Names.capital(name) + ": ")
                .orElse("");
    }

    private static String answered(Answer a) {
        String by = a.who().isBlank() ? "" : " by the " + a.who();
        return Names.capital(a.says().written()) + by + (a.date().isBlank() ? "" : ", " + a.date()) + ".";
    }

    private static String from(Finding f) {
        String edition = f.edition().isBlank() || f.reference().contains(f.edition()) ? "" : ", " + f.edition();
        return "Rule " + f.rule() + "; " + f.reference() + edition + "; held as "
                + f.confidence().written().toLowerCase(Locale.ROOT) + ". " + FindingWords.required(f);
    }
}
