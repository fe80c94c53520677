package longrun.rules.shape;

import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.Severity;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;

/** Makes findings: where, what was found, what must be, the reference; apart from these the mend and the question. */
public final class Judge {

    private Judge() {}

    public static Verdict holds(Threshold t, Place place) {
        return Verdict.of(t.rule(), place, State.HOLDS);
    }

    public static Verdict notFor(Threshold t, Place place) {
        return Verdict.of(t.rule(), place, State.NOT_FOR_THIS_PLAN);
    }

    /** Broken, where another finding already says what mends it. */
    public static Verdict brokenElsewhere(Threshold t, Place place) {
        return Verdict.of(t.rule(), place, State.BROKEN);
    }

    public static Verdict broken(Threshold t, Place place, String found, String remedy, String field) {
        return Verdict.of(t.rule(), place, State.BROKEN, finding(t, t.severity(), place, found, remedy, field));
    }

    /** Broken as far as is known, with the question whose answer could mend it on paper. */
    public static Verdict brokenAsking(
            Threshold t, Place place, String found, String remedy, Question question, String field) {
        Question asked = question.about(place);
        return Verdict.of(
                t.rule(),
                place,
                State.BROKEN,
                begun(t, t.severity(), place, found)
                        .remedy(mend(remedy, place, t))
                        .ask(asked.whom(), asked.text())
                        .at(field));
    }

    public static Verdict asks(Threshold t, Place place, String found, Question question, String field) {
        Question asked = question.about(place);
        return Verdict.of(
                t.rule(),
                place,
                State.ASKS,
                begun(t, Severity.NOTE, place, found)
                        .remedy("Enter the answer.")
                        .ask(asked.whom(), asked.text())
                        .at(field));
    }

    /** The chosen code is met, another code asks for more: both are named. */
    public static Verdict stricterElsewhere(
            Threshold own, Threshold other, State state, Place place, String found, String remedy, String field) {
        Citation both = new Citation(own.reference() + "; " + other.reference(), own.edition(), other.confidence());
        Finding finding = FindingBuilder.finding(own.name(), Severity.NOTE, place.at(), both)
                .found(found.replace("{who}", place.label()))
                .required(other.source() + " asks for more: " + other.required() + ". The code that decides here: "
                        + own.required())
                .remedy(mend(remedy, place, other) + " Only where that code is followed.")
                .at(field);
        return Verdict.of(own.rule(), place, state, finding);
    }

    public static Finding finding(
            Threshold t, Severity severity, Place place, String found, String remedy, String field) {
        return begun(t, severity, place, found).remedy(mend(remedy, place, t)).at(field);
    }

    private static FindingBuilder begun(Threshold t, Severity severity, Place place, String found) {
        return FindingBuilder.finding(t.name(), severity, place.at(), t.citation())
                .found(found.replace("{who}", place.label()))
                .required(t.required());
    }

    private static String mend(String remedy, Place place, Threshold limit) {
        return remedy.replace("{who}", place.label()).replace("{limit}", limit.limitText());
    }
}
