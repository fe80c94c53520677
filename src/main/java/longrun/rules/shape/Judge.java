package longrun.rules.shape;

import java.util.Optional;
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
        return Verdict.of(
                place, State.BROKEN, new Telling(t, t.severity(), place, found, remedy, Optional.empty(), field));
    }

    /** Broken as far as is known, with the question whose answer could mend it on paper. */
    public static Verdict brokenAsking(
            Threshold t, Place place, String found, String remedy, Question question, String field) {
        return Verdict.of(
                place, State.BROKEN, new Telling(t, t.severity(), place, found, remedy, Optional.of(question), field));
    }

    public static Verdict asks(Threshold t, Place place, String found, Question question, String field) {
        return Verdict.of(
                place,
                State.ASKS,
                new Telling(t, Severity.NOTE, place, found, "Enter the answer.", Optional.of(question), field));
    }

    /** The chosen code is met, another code asks for more: both are named. */
    public static Verdict stricterElsewhere(
            Threshold own, Threshold other, State state, Place place, String found, String remedy, String field) {
        Citation both = new Citation(own.reference() + "; " + other.reference(), own.edition(), other.confidence());
        Finding finding = place.found(FindingBuilder.finding(own.name(), Severity.NOTE, place.at(), both), found)
                .required(other.source() + " asks for more: " + other.required() + ". The code that decides here: "
                        + own.required())
                .remedy(place.named(remedy).replace("{limit}", other.limitText())
                        + " Only where that code is followed.")
                .atEntry(field);
        return Verdict.of(own.rule(), place, state, finding);
    }
}
