package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.EntryWords;
import longrun.draft.hookup.DrawnParts;
import longrun.drawing.part.HookupDrawing;
import longrun.drawing.part.LineRegulatorDrawing;
import longrun.drawing.part.VentDrawing;
import longrun.finding.EntryName;
import longrun.plan.Appliance.Part;
import longrun.plan.PlanPath;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import longrun.ui.frame.Dom;
import longrun.words.Sentence;

/**
 * What a rule is for, folded up until it is asked: what can happen, and an example that breaks it beside one that keeps
 * it.
 *
 * @param ask unfolds it
 * @param told what it then shows
 */
record RuleWhy(Element ask, Element told) {

    private static final String FIGURES = "figure";

    /** Empty for what no rule of the trade tells, such as a size. */
    static Optional<RuleWhy> of(String rule) {
        return Explanations.find(rule).map(RuleWhy::folded);
    }

    private static RuleWhy folded(Explanation e) {
        Element told = Dom.el("div", "why");
        Dom.show(told, false);
        Element ask = Dom.button("ask", "what can happen?").setAttribute("aria-expanded", "false");
        ask.addEventListener("click", click -> {
            if (told.getChildCount() == 0) {
                tell(e, told);
            }
            boolean open = told.hasAttribute("hidden");
            Dom.show(told, open);
            ask.setAttribute("aria-expanded", String.valueOf(open));
            Dom.retext(ask, open ? "hide" : "what can happen?");
        });
        return new RuleWhy(ask, told);
    }

    private static void tell(Explanation e, Element told) {
        told.appendChild(Dom.el("p", "happens", Dom.text("b", "", e.title() + " "), Dom.words(e.whatCanHappen())));
        DraftValue wrong = DraftValue.parse(e.wrong().plan());
        DraftValue right = DraftValue.parse(e.right().plan());
        Set<String> changed = new LinkedHashSet<>(pointers(e.wrong()));
        changed.addAll(pointers(e.right()));
        List<String> broken = entries(wrong, changed);
        List<String> kept = entries(right, changed);
        told.appendChild(Dom.el(
                "div",
                "example",
                example("Wrong", drawn(e.rule(), wrong, changed), differing(broken, kept)),
                example("Right", drawn(e.rule(), right, changed), differing(kept, broken))));
        told.appendChild(RuleSource.lines(e));
    }

    private static Element example(String word, String svg, String words) {
        Element figure = Dom.el(FIGURES, "", Dom.text("figcaption", "", word));
        if (!svg.isEmpty()) {
            figure.appendChild(Dom.drawing(svg));
        }
        if (!words.isEmpty()) {
            figure.appendChild(Dom.text("p", "", words));
        }
        return figure;
    }

    /** The thing the example is about, drawn from the plan itself. */
    private static String drawn(String rule, DraftValue plan, Set<String> changed) {
        String about = changed.stream()
                .map(p -> PlanPath.of(p).thing())
                .filter(t -> !t.isEmpty())
                .findFirst()
                .orElse("");
        if (about.startsWith("/regulators")
                && (rule.startsWith("regulator-vent") || rule.startsWith("line-regulator"))) {
            return DrawnParts.regulator(plan.at(about))
                    .map(r -> rule.startsWith("line") ? LineRegulatorDrawing.of(r) : VentDrawing.of(r))
                    .orElse("");
        }
        if (!about.startsWith("/appliances")) {
            return "";
        }
        List<Part> parts = DrawnParts.of(plan.at(about + "/connection"));
        int index = PlanPath.of(about).findIndex().orElseThrow();
        String name = DraftAppliances.of(plan).name(index);
        return parts.isEmpty() ? "" : HookupDrawing.small(name, parts);
    }

    /** The entries that the other example has not. */
    private static String differing(List<String> own, List<String> other) {
        return Sentence.of(
                own.stream().filter(e -> !other.contains(e)).distinct().collect(Collectors.joining("; ")));
    }

    private static List<String> pointers(Explanation.Example example) {
        return DraftValue.parse(example.entries()).names();
    }

    /** What stands at these places of the plan, each entry as its name and value. */
    private static List<String> entries(DraftValue plan, Set<String> places) {
        List<String> all = new ArrayList<>();
        for (String place : places) {
            DraftValue there = plan.at(place);
            String name = place.substring(place.lastIndexOf('/') + 1);
            if (there.isNothing()) {
                all.add(EntryName.of(PlanPath.of(place)) + ": not entered");
            } else {
                all.addAll(EntryWords.listIn(name, there));
            }
        }
        return all;
    }
}
