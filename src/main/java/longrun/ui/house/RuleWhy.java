package longrun.ui.house;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.drawing.HookupDrawing;
import longrun.drawing.LineRegulatorDrawing;
import longrun.drawing.VentDrawing;
import longrun.plan.Appliance.Part;
import longrun.plan.json.PlanReader;
import longrun.rules.Explanation;
import longrun.rules.Explanations;
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
            Dom.retext(ask, open ? "fold up" : "what can happen?");
        });
        return new RuleWhy(ask, told);
    }

    private static void tell(Explanation e, Element told) {
        told.appendChild(Dom.el("p", "happens", Dom.text("b", "", e.title() + " "), Dom.words(e.whatCanHappen())));
        JsonNode wrong = parsed(e.wrong());
        JsonNode right = parsed(e.right());
        List<String> broken = entries(wrong);
        List<String> kept = entries(right);
        told.appendChild(Dom.el(
                "div",
                "example",
                example("Wrong", drawn(e.rule(), wrong), differing(broken, kept)),
                example("Right", drawn(e.rule(), right), differing(kept, broken))));
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

    private static String drawn(String rule, JsonNode plan) {
        if (rule.startsWith("regulator-vent") || rule.startsWith("line-regulator")) {
            return DrawnParts.regulator(plan.at("/regulators/0"))
                    .map(r -> rule.startsWith("line") ? LineRegulatorDrawing.of(r) : VentDrawing.of(r))
                    .orElse("");
        }
        List<Part> parts = DrawnParts.of(plan.at("/appliances/0/connection"));
        String kind = plan.at("/appliances/0/kind").asText("appliance").replace('-', ' ');
        return parts.isEmpty() ? "" : HookupDrawing.small(kind, parts);
    }

    /** The entries that the other example has not. */
    private static String differing(List<String> own, List<String> other) {
        return Sentence.of(own.stream()
                .filter(e -> !other.contains(e))
                .map(RuleWhy::spoken)
                .distinct()
                .collect(Collectors.joining("; ")));
    }

    private static String spoken(String entry) {
        return entry.replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .replace(": true", ": yes")
                .replace(": false", ": no")
                .replace("btu/h", "Btu/h")
                .replace("part: ", "")
                .replace('-', ' ');
    }

    /** Every entry as its name and value, wherever it stands. */
    private static List<String> entries(JsonNode plan) {
        List<String> all = new ArrayList<>();
        collect("", plan, all);
        return all;
    }

    private static void collect(String name, JsonNode node, List<String> all) {
        if (node.isObject()) {
            node.properties().forEach(e -> collect(e.getKey(), e.getValue(), all));
        } else if (node.isArray()) {
            node.forEach(each -> collect(name, each, all));
        } else {
            all.add(name + ": " + node.asText());
        }
    }

    private static JsonNode parsed(String json) {
        try {
            return PlanReader.tree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an explanation's example is JSON", e);
        }
    }
}
