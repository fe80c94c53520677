package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.entry.DraftValue;
import longrun.review.Review;
import longrun.rules.RuleReport;
import longrun.rules.WhatChanged;
import longrun.rules.explanation.Explanations;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.CodeNames;
import longrun.words.Names;
import longrun.words.Sentence;
import org.jspecify.annotations.Nullable;

/** What another code or a local change of a limit changes in this house, at once, and why. */
public final class CodeChange {

    private final HousePage desk;
    private final Element words = Dom.text("p", "lede", "");
    private final Element list = Dom.el("ul", "");
    private final Element element = Dom.el(
                    "section", "changes", Dom.text("h4", "", "What the change of the code changes"), words, list)
            .setAttribute("aria-live", "polite");
    private @Nullable Before before;
    private String shown = "";

    /** How the house stood under the code before. */
    private record Before(DraftValue rest, DraftValue code, RuleReport report) {}

    CodeChange(HousePage desk) {
        this.desk = desk;
        Dom.show(element, false);
    }

    Element element() {
        return element;
    }

    /** Compares with the last state in which all but the code was the same. */
    void show() {
        Optional<Review> review = desk.session().review();
        if (review.isEmpty()) {
            before = null;
            Dom.show(element, false);
        }
        if (!desk.session().isCurrent() || review.isEmpty()) {
            return;
        }
        DraftValue code = desk.session().draft().get("code");
        DraftValue rest = desk.session().draft().without("code");
        RuleReport report = review.get().rules();
        Before was = before;
        if (was == null || !was.rest().equals(rest)) {
            before = new Before(rest, code, report);
            Dom.show(element, false);
            shown = "";
            return;
        }
        boolean other = !was.code().equals(code);
        Dom.show(element, other);
        if (other) {
            tell(was.code(), WhatChanged.between(was.report(), report), review.get());
        }
    }

    private void tell(DraftValue was, List<WhatChanged> changes, Review review) {
        String key = changes.toString();
        if (key.equals(shown)) {
            return;
        }
        shown = key;
        String old =
                CodeNames.of(was.textOf("profile")) + (was.get("amendments").isEmpty() ? "" : " as amended");
        Dom.retext(
                words,
                changes.isEmpty()
                        ? "Nothing in this house, against the " + old + "."
                        : "Against the " + old + ", " + (changes.size() == 1 ? "one thing" : changes.size() + " things")
                                + " in this house:");
        list.removeAllChildren();
        changes.forEach(c -> list.appendChild(line(c, review)));
    }

    private static Element line(WhatChanged c, Review review) {
        String name = Names.of(review, c.at());
        String title = Explanations.find(c.rule()).map(e -> e.title()).orElse(c.rule());
        String where = name.equals("plan") ? "" : Names.capital(name) + ": ";
        Element line = Dom.el(
                "li", "", Dom.words(where), Dom.text("b", "", c.inWords()), Dom.words(". " + Sentence.of(title)));
        String found = c.found().isEmpty() ? "" : Sentence.of(c.found()) + " ";
        String wanted =
                c.required().isEmpty() ? "" : "Required: " + Sentence.of(c.required() + " (" + c.source() + ")");
        if (!(found + wanted).isEmpty()) {
            line.appendChild(Dom.text("p", "", found + wanted));
        }
        return line;
    }
}
