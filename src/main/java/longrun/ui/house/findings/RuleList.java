package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.Review;
import longrun.rules.Rules;
import longrun.rules.WhatChanged;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import longrun.rules.limit.State;
import longrun.rules.shape.RuleState;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.Names;

/** Every rule with its state in this house, by topic, each explained, and its source told, on demand. */
final class RuleList {

    private static final String OPEN = "element.open";

    private final HousePage desk;
    private final Set<String> opened = new HashSet<>();
    private final Element element = Dom.el("section", "part", Dom.text("h3", "", "All rules"));
    private List<RuleState> shown = List.of();
    private List<Finding> found = List.of();
    private boolean known;

    RuleList(HousePage desk) {
        this.desk = desk;
    }

    Element element() {
        return element;
    }

    void show() {
        Optional<Review> review = desk.session().review();
        List<RuleState> now = review.map(r -> r.rules().states()).orElse(List.of());
        List<Finding> findings = review.map(Review::findings).orElse(List.of());
        if (now.equals(shown) && findings.equals(found) && review.isPresent() == known && element.getChildCount() > 1) {
            return;
        }
        shown = now;
        found = findings;
        known = review.isPresent();
        element.removeAllChildren();
        element.appendChild(Dom.text("h3", "", "All rules"));
        List<Explanation> all = Explanations.all();
        int from = 0;
        while (from < all.size()) {
            int to = from + 1;
            while (to < all.size() && all.get(to).topic().equals(all.get(from).topic())) {
                to++;
            }
            element.appendChild(topic(all.subList(from, to), review));
            from = to;
        }
    }

    /** A topic is one line, with how its rules stand, that opens into them; it stays as it was left. */
    private Element topic(List<Explanation> rules, Optional<Review> review) {
        String name = rules.get(0).topic();
        Element list = Dom.el("ul", "rule-list");
        Map<Words, Integer> counts = new LinkedHashMap<>();
        for (Explanation e : rules) {
            Map<Words, Set<String>> standing = standing(e.rule(), review);
            counts.merge(standing.keySet().iterator().next(), 1, Integer::sum);
            list.appendChild(rule(e, standing));
        }
        Element states = Dom.el("span", "st");
        counts.entrySet().stream()
                .sorted(Comparator.comparing(
                        (Map.Entry<Words, Integer> c) -> c.getKey().rank()))
                .forEach(c -> states.appendChild(Dom.text(
                        "span",
                        c.getKey().bad() ? "must" : "",
                        (states.getChildCount() == 0 ? "" : ", ") + c.getKey().counted(c.getValue()))));
        Element topic = Dom.el("details", "rule-topic", Dom.el("summary", "", Dom.text("h4", "", name), states), list);
        topic.setAttribute("open", opened.contains(name));
        topic.addEventListener("toggle", t -> {
                    boolean open = t.getEventData().getBoolean(OPEN);
                    topic.setAttribute("open", open);
                    if (open) {
                        opened.add(name);
                    } else {
                        opened.remove(name);
                    }
                })
                .addEventData(OPEN);
        return topic;
    }

    private static Element rule(Explanation e, Map<Words, Set<String>> standing) {
        Element states = Dom.el("span", "st");
        standing.forEach((words, there) -> states.appendChild(Dom.el(
                "span",
                "",
                Dom.text("b", words.bad() ? "must" : "", words.says()),
                Dom.words(there.isEmpty() ? " " : " " + String.join(", ", there) + " "))));
        Element title = Dom.el("span", "", Dom.words(e.title() + " "));
        Element item = Dom.el("li", "", title, states);
        RuleSource.Ask from = RuleSource.ask(e);
        title.appendChild(from.ask());
        item.appendChild(from.told());
        RuleWhy.of(e.rule()).ifPresent(why -> {
            why.ask().setAttribute("aria-label", "what can happen? " + e.title());
            title.appendChild(Dom.words(" "), why.ask());
            item.appendChild(why.told());
        });
        return item;
    }

    /** How a rule stands, in words, and where. */
    private Map<Words, Set<String>> standing(String rule, Optional<Review> review) {
        if (review.isEmpty()) {
            return Map.of(new Words("not known", false), Set.of());
        }
        Map<Words, Set<String>> all = new LinkedHashMap<>();
        boolean judged = shown.stream().anyMatch(s -> s.rule().equals(rule));
        for (State state : List.of(State.BROKEN, State.ASKS, State.HOLDS)) {
            shown.stream()
                    .filter(s -> s.rule().equals(rule) && s.state() == state)
                    .forEach(s -> all.computeIfAbsent(
                                    new Words(WhatChanged.words(state), state == State.BROKEN),
                                    k -> new LinkedHashSet<>())
                            .add(Names.of(review.get(), s.at())));
        }
        if (!judged) {
            found.stream()
                    .filter(f -> f.rule().equals(rule))
                    .sorted(Comparator.comparing(Finding::severity))
                    .forEach(f -> all.computeIfAbsent(told(f.severity()), k -> new LinkedHashSet<>())
                            .add(Names.of(review.get(), f.at())));
        }
        if (all.isEmpty()) {
            boolean placed = Rules.all().stream().anyMatch(r -> r.name().equals(rule));
            String nothing = placed ? WhatChanged.words(State.NOT_FOR_THIS_PLAN) : "nothing found";
            all.put(new Words(nothing, false), Set.of());
        }
        return all;
    }

    /** Sizes, pressures and the tank tell only what they find. */
    private static Words told(Severity severity) {
        return switch (severity) {
            case MUST_FIX -> new Words(WhatChanged.words(State.BROKEN), true);
            case CAUTION -> new Words("caution", false);
            case NOTE -> new Words(WhatChanged.words(State.ASKS), false);
        };
    }

    private record Words(String says, boolean bad) {

        /** What harms first. */
        int rank() {
            return bad
                    ? 0
                    : List.of("caution", "asks", "not known", "holds", "nothing found", "not for this plan")
                                    .indexOf(says)
                            + 1;
        }

        String counted(int rules) {
            return rules + " "
                    + switch (says) {
                        case "asks" -> rules == 1 ? "asks" : "ask";
                        case "holds" -> rules == 1 ? "holds" : "hold";
                        default -> says;
                    };
        }
    }
}
