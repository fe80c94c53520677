package longrun.drawing.part;

import longrun.plan.Distance;
import longrun.plan.Fact;

/** What was entered, as a drawing says it. */
final class EntryText {

    private EntryText() {}

    static String distance(Fact<Distance> distance) {
        return distance.isNone()
                ? "there is none"
                : distance.findText().map(t -> t.replace(">", "over")).orElse("not known");
    }

    static String text(Fact<?> fact, String none) {
        return fact.isNone() ? none : fact.findText().orElse("not known");
    }

    static String yesNo(Fact<Boolean> fact, String yes, String no) {
        return fact.isKnown() ? (fact.is(true) ? yes : no) : "not known";
    }
}
