package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.choice.Arrangement;

/** Which starting values stand in for entries of the hot water, and a storage tank that stands lukewarm by the run. */
public final class HotWaterQuestions {

    private static final String AT = "hot-water";
    private static final RuleName LUKEWARM = new RuleName("storage-lukewarm");
    private static final Citation HEALTH = new Citation("public health guidance", "", Confidence.MEMORY);

    private HotWaterQuestions() {}

    /** A note at each field a starting value stands in for, and what the run shows of the house's own arrangement. */
    public static List<Finding> of(HotWaterStudy study) {
        List<Finding> out = new ArrayList<>();
        for (StandIn s : study.standIns()) {
            boolean burner = s.field().startsWith(DailyNeed.AT + "/onDemand");
            if (!burner
                    || study.chosen().filter(a -> a != Arrangement.STORAGE_ONLY).isPresent()) {
                out.add(note(s.value(), s.required(), s.question(), s.field()));
            }
        }
        for (int place : study.unfinishedDraws()) {
            out.add(note(
                    "draw " + (place + 1) + " is not counted: its flow or how long it lasts is not entered",
                    "flow and length of each draw",
                    "How long is draw " + (place + 1) + ", and at which flow, in gal/min?",
                    DailyNeed.AT + "/draws/" + place));
        }
        study.chosen()
                .filter(a -> a != Arrangement.ON_DEMAND_ONLY)
                .map(study::year)
                .filter(y -> y.lukewarmHours() > 24)
                .ifPresent(y -> out.add(lukewarm(y)));
        return List.copyOf(out);
    }

    private static Finding note(String found, String required, String question, String field) {
        return FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, AT, Citation.commonPractice())
                .found(found)
                .required(required)
                .remedy("Enter " + required + ".")
                .ask(AskWhom.OWNER, question)
                .atEntry(field);
    }

    private static Finding lukewarm(ArrangementYear year) {
        return FindingBuilder.finding(LUKEWARM, Severity.CAUTION, AT, HEALTH)
                .found("the water in the storage heater stands between 68 and 122 degF for "
                        + Math.min(365, Math.round(year.lukewarmHours() / 24))
                        + " days on end: its heat is drawn faster than it comes")
                .required(
                        "storage held at 140 degF with a mixing valve behind it, or a written weekly heat-up: Legionella"
                                + " multiplies in lukewarm water")
                .remedy("Turn the element on or ask for a stronger heater; ask the health authority.")
                .ask(AskWhom.FITTER, "What brings the storage heater back to 140 degF after the longest draws?")
                .atEntry(StorageEntries.AT + "/elementOn");
    }
}
