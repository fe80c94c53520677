package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import longrun.draft.OpenQuestions;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.place.HousePage;
import longrun.words.QuestionsByWhom;
import longrun.words.Sentence;

/**
 * The owner's questions that come next, no more than one takes in at once, the rest of them folded up; those that are taken
 * along to supplier, fitter and inspector folded up each under whom they are for; those of places to come named.
 */
final class NextQuestions {

    private final HousePage desk;
    private final FieldList fields;

    NextQuestions(HousePage desk, FieldList fields) {
        this.desk = desk;
        this.fields = fields;
    }

    /** Draws them below what is there; says whether there were any. */
    boolean draw(Element groups) {
        OpenQuestions open = OpenQuestions.of(desk.session());
        List<OpenQuestions.Asked> next = open.next();
        if (!next.isEmpty()) {
            int all = open.own().size();
            int more = all - next.size();
            Element part = Dom.el(
                    "section",
                    "part",
                    Dom.text(
                            "h3",
                            "",
                            "Questions for you, " + (more == 0 ? "" : "the next ") + next.size()
                                    + (more == 0 ? "" : " of " + all)));
            next.forEach(a -> part.appendChild(line(a)));
            if (more > 0) {
                Element rest =
                        Dom.el("details", "more-asked", Dom.text("summary", "", more == 1 ? "1 more" : more + " more"));
                open.own().subList(next.size(), all).forEach(a -> rest.appendChild(line(a)));
                part.appendChild(rest);
            }
            groups.appendChild(part);
        }
        forSomeoneElse(groups, open);
        later(groups);
        return open.count() > 0;
    }

    /** Draws all of them below what is there, by who can answer; says whether there were any. */
    boolean drawByWhom(Element groups) {
        OpenQuestions open = OpenQuestions.of(desk.session());
        Map<AskWhom, List<OpenQuestions.Asked>> own = open.own().stream()
                .collect(Collectors.groupingBy(OpenQuestions.Asked::whom, TreeMap::new, Collectors.toList()));
        own.forEach((whom, asked) -> {
            Element part =
                    Dom.el("section", "part", Dom.text("h3", "", QuestionsByWhom.heading(whom) + ", " + asked.size()));
            asked.forEach(a -> part.appendChild(line(a)));
            groups.appendChild(part);
        });
        forSomeoneElse(groups, open);
        later(groups);
        return open.count() > 0;
    }

    private void forSomeoneElse(Element groups, OpenQuestions open) {
        open.forSomeoneElse().forEach((whom, asked) -> {
            Element title = Dom.text("h3", "", QuestionsByWhom.heading(whom) + ", " + asked.size());
            Element part = PlacePart.folded("for-" + whom.written(), title, "");
            asked.forEach(a -> part.getChild(0).appendChild(line(a)));
            groups.appendChild(part);
        });
    }

    private void later(Element groups) {
        String later = Arrays.stream(PlaceKind.values())
                .filter(p -> p != PlaceKind.FINDINGS && p != PlaceKind.VALVE && p != PlaceKind.PAPERS)
                .filter(p -> !PlaceStatus.isStarted(desk.session(), p))
                .map(PlaceKind::title)
                .collect(Collectors.joining(", "));
        if (!later.isEmpty()) {
            groups.appendChild(Dom.text(
                    "p", "lede", "Not entered yet: " + later + ". What they ask comes once something stands there."));
        }
    }

    private Element line(OpenQuestions.Asked asked) {
        Finding f = asked.first();
        Element line = HouseFinding.of(f, desk);
        if (asked.entries().size() > 1 && !others(asked).isEmpty()) {
            line.appendChild(Dom.text("span", "q", " The same is asked of " + others(asked) + "."));
        }
        if (asked.isAnsweredAtOnce(desk.session())) {
            line.appendChild(atOnce(asked));
        }
        return Dom.el("div", "", line.appendChild(FindingReply.of(desk, fields, f)));
    }

    /** One key for all parts, for whoever has looked at each. */
    private Element atOnce(OpenQuestions.Asked asked) {
        int count = asked.entries().size();
        String of = count == 2 ? "Of both:" : "Of all " + count + ":";
        Element group = Dom.el("span", "find-acts at-once", Dom.words(" " + of))
                .setAttribute("role", "group")
                .setAttribute(
                        "aria-label", of + " " + Sentence.of(asked.first().ask().orElse("")));
        for (boolean yes : new boolean[] {true, false}) {
            Element button = Dom.button("ask", yes ? "yes" : "no");
            button.addEventListener("click", e -> asked.answer(desk.session(), yes));
            group.appendChild(button);
        }
        return group;
    }

    private String others(OpenQuestions.Asked asked) {
        return desk.session()
                .review()
                .map(r -> QuestionsByWhom.others(r, asked.alike()))
                .orElse("");
    }
}
