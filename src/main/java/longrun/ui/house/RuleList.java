package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.review.Review;
import longrun.rules.Explanation;
import longrun.rules.Explanations;
import longrun.rules.RuleState;
import longrun.rules.State;
import longrun.rules.WhatChanged;
import longrun.ui.frame.Dom;
import longrun.words.Names;

/** Every rule with its state in this house, by topic, each explained on demand. */
final class RuleList {

    private final HouseDesk desk;
    private final Element element = Dom.el("section", "part", Dom.text("h3", "", "All rules"));
    private List<RuleState> shown = List.of();
    private boolean known;

    RuleList(HouseDesk desk) {
        this.desk = desk;
    }

    Element element() {
        return element;
    }

    void show() {
        Optional<Review> review = desk.session().review();
        List<RuleState> now = review.map(r -> r.rules().states()).orElse(List.of());
        if (now.equals(shown) && review.isPresent() == known && element.getChildCount() > 1) {
            return;
        }
        shown = now;
        known = review.isPresent();
        element.removeAllChildren();
        element.appendChild(Dom.text("h3", "", "All rules"));
        String topic = "";
        Element list = Dom.el("ul", "rule-list");
        for (Explanation e : Explanations.all()) {
            if (!e.topic().equals(topic)) {
                topic = e.topic();
                list = Dom.el("ul", "rule-list");
                element.appendChild(Dom.text("h4", "", topic), list);
            }
            list.appendChild(rule(e, review));
        }
    }

    private Element rule(Explanation e, Optional<Review> review) {
        Map<State, List<String>> places = new EnumMap<>(State.class);
        for (RuleState s : shown) {
            if (s.rule().equals(e.rule())) {
                List<String> there = places.computeIfAbsent(s.state(), k -> new ArrayList<>());
                String name = review.map(r -> Names.of(r.plan(), s.at())).orElse(s.at());
                if (!there.contains(name)) {
                    there.add(name);
                }
            }
        }
        Element states = Dom.el("span", "st");
        for (State state : List.of(State.BROKEN, State.ASKS, State.HOLDS)) {
            List<String> there = places.getOrDefault(state, List.of());
            if (!there.isEmpty()) {
                states.appendChild(Dom.el(
                        "span",
                        "",
                        Dom.text("b", state == State.BROKEN ? "must" : "", WhatChanged.words(state)),
                        Dom.words(" " + there.stream().collect(Collectors.joining(", ")) + " ")));
            }
        }
        if (states.getChildCount() == 0) {
            states.setText(review.isPresent() ? WhatChanged.words(State.NOT_FOR_THIS_PLAN) : "not known");
        }
        Element title = Dom.el("span", "", Dom.words(e.title() + " "));
        Element item = Dom.el("li", "", title, states);
        RuleWhy.of(e.rule()).ifPresent(why -> {
            why.ask().setAttribute("aria-label", "what can happen? " + e.title());
            title.appendChild(why.ask());
            item.appendChild(why.told());
        });
        return item;
    }
}
