package longrun.rules.shape;

import java.util.Optional;
import longrun.finding.Finding;
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
        Finding plain = finding(t, t.severity(), place, found, remedy, field);
        Question asked = question.about(place);
        Finding asking = new Finding(
                plain.rule(),
                plain.severity(),
                plain.at(),
                plain.found(),
                plain.required(),
                plain.reference(),
                plain.edition(),
                plain.confidence(),
                plain.remedy(),
                Optional.of(asked.text()),
                Optional.of(asked.whom()),
                field);
        return Verdict.of(t.rule(), place, State.BROKEN, asking);
    }

    public static Verdict asks(Threshold t, Place place, String found, Question question, String field) {
        Question asked = question.about(place);
        Finding finding = new Finding(
                t.rule(),
                Severity.NOTE,
                place.at(),
                sentence(found.replace("{who}", place.label())),
                t.required(),
                t.reference(),
                t.edition(),
                t.confidence(),
                "Enter the answer.",
                Optional.of(asked.text()),
                Optional.of(asked.whom()),
                field);
        return Verdict.of(t.rule(), place, State.ASKS, finding);
    }

    /** The chosen code is met, another code asks for more: both are named. */
    public static Verdict stricterElsewhere(
            Threshold own, Threshold other, State state, Place place, String found, String remedy, String field) {
        Finding finding = new Finding(
                own.rule(),
                Severity.NOTE,
                place.at(),
                sentence(found.replace("{who}", place.label())),
                other.source() + " asks for more: " + other.required() + ". The code that decides here: "
                        + own.required(),
                own.reference() + "; " + other.reference(),
                own.edition(),
                other.confidence(),
                remedy.replace("{who}", place.label()).replace("{limit}", other.limitText())
                        + " Only where that code is followed.",
                Optional.empty(),
                Optional.empty(),
                field);
        return Verdict.of(own.rule(), place, state, finding);
    }

    public static Finding finding(
            Threshold t, Severity severity, Place place, String found, String remedy, String field) {
        return new Finding(
                t.rule(),
                severity,
                place.at(),
                sentence(found.replace("{who}", place.label())),
                t.required(),
                t.reference(),
                t.edition(),
                t.confidence(),
                remedy.replace("{who}", place.label()).replace("{limit}", t.limitText()),
                Optional.empty(),
                Optional.empty(),
                field);
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
