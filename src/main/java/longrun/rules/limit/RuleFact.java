package longrun.rules.limit;

import java.util.List;
import longrun.origin.Confidence;
import longrun.plan.choice.Named;

/**
 * One fact the rules rest on, in our own words, and what becomes of it.
 *
 * @param rules the rules that check it or show it
 * @param why what uses or shows it, or the entry a plan does not hold for the rest of it
 */
public record RuleFact(
        String id,
        String topic,
        String statement,
        String numbers,
        String where,
        Confidence confidence,
        Use use,
        List<String> rules,
        String why) {

    /** What becomes of a fact. */
    public enum Use implements Named {
        CHECKED,
        /** A figure, the test plan or a point before the valve rests on it. */
        USED,
        /** Told beside a rule, for a person to know. */
        SHOWN,
        /** A plan holds no entry that would show it. */
        NOT_HELD
    }

    public RuleFact {
        rules = List.copyOf(rules);
    }
}
