package longrun.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.rules.limit.State;
import longrun.rules.shape.RuleState;

/**
 * What another code or a local amendment changes: every rule whose state at a place, or whose requirement there, is not
 * what it was, and why.
 *
 * @param rule its public name
 * @param at the id it stands at, or tank, site, plan
 * @param before its state under the old code
 * @param after its state under the new one
 * @param found what was found, where it is told; empty where the rule holds now
 * @param required what must be now, or what had to be before where nothing is told now
 * @param source the text that decides it
 */
public record WhatChanged(
        String rule, String at, State before, State after, String found, String required, String source) {

    /** What changed between two reports on the same house, in the order of the rules. */
    public static List<WhatChanged> between(RuleReport before, RuleReport after) {
        Map<String, RuleState> was = byPlace(before);
        Map<String, RuleState> is = byPlace(after);
        List<WhatChanged> all = new ArrayList<>();
        for (Map.Entry<String, RuleState> e : is.entrySet()) {
            RuleState now = e.getValue();
            RuleState then = was.get(e.getKey());
            State old = then == null ? State.NOT_FOR_THIS_PLAN : then.state();
            Optional<Finding> told = find(after, now);
            Optional<Finding> toldBefore = find(before, now);
            String wanted = told.map(Finding::required).orElse("");
            String wantedBefore = toldBefore.map(Finding::required).orElse("");
            if ((old != now.state() && !isQuiet(now, old)) || !Objects.equals(wanted, wantedBefore)) {
                all.add(of(now, old, told, toldBefore));
            }
        }
        was.forEach((place, then) -> {
            if (!is.containsKey(place) && !isQuiet(then, State.NOT_FOR_THIS_PLAN)) {
                RuleState gone = new RuleState(then.rule(), then.at(), then.pointer(), State.NOT_FOR_THIS_PLAN);
                all.add(of(gone, then.state(), Optional.empty(), find(before, then)));
            }
        });
        return all.stream().distinct().toList();
    }

    /** Whether the code is entered at all is no rule of the code: only its question counts. */
    private static boolean isQuiet(RuleState one, State other) {
        boolean asks = one.state() == State.ASKS || other == State.ASKS;
        return one.state() == other || (one.rule().equals("entry-missing") && !asks);
    }

    private static WhatChanged of(RuleState now, State old, Optional<Finding> told, Optional<Finding> toldBefore) {
        Optional<Finding> speaks = told.or(() -> toldBefore);
        return new WhatChanged(
                now.rule(),
                now.at(),
                old,
                now.state(),
                told.map(Finding::found).orElse(""),
                speaks.map(Finding::required).orElse(""),
                speaks.map(f -> f.edition().isEmpty() ? f.reference() : f.reference() + ", " + f.edition())
                        .orElse(""));
    }

    /** The change of state in words, such as "held, now broken". */
    public String inWords() {
        return before == after
                ? words(after) + ", as before, with another limit"
                : past(before) + ", now " + words(after);
    }

    private static String past(State state) {
        return switch (state) {
            case HOLDS -> "held";
            case BROKEN -> "was broken";
            case ASKS -> "asked";
            case NOT_FOR_THIS_PLAN -> "did not ask this";
        };
    }

    /** A state as a person reads it. */
    public static String words(State state) {
        return switch (state) {
            case HOLDS -> "holds";
            case BROKEN -> "broken";
            case ASKS -> "asks";
            case NOT_FOR_THIS_PLAN -> "not for this plan";
        };
    }

    /** Every rule at every place; the same place twice is told apart by its number. */
    private static Map<String, RuleState> byPlace(RuleReport report) {
        Map<String, RuleState> all = new LinkedHashMap<>();
        for (RuleState s : report.states()) {
            String key = s.rule() + " " + s.pointer();
            int number = 1;
            while (all.containsKey(key + " " + number)) {
                number++;
            }
            all.put(key + " " + number, s);
        }
        return all;
    }

    private static Optional<Finding> find(RuleReport report, RuleState s) {
        return report.findings().stream()
                .filter(f -> f.rule().equals(s.rule()) && f.at().equals(s.at()))
                .filter(f -> f.field().startsWith(s.pointer()))
                .findFirst()
                .or(() -> report.findings().stream()
                        .filter(f -> f.rule().equals(s.rule()) && f.at().equals(s.at()))
                        .findFirst());
    }
}
