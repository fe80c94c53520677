package longrun.rules.shutoff;

import java.util.List;
import java.util.Optional;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Site;
import longrun.plan.Site.MainShutoff;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** The building has a main shutoff outdoors that can be reached. */
final class MainShutoffRule implements Rule {

    private static final Place SITE = new Place("site", "/site", "the house");

    @Override
    public String name() {
        return "shutoff-main";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        if (house.plan().appliances().isEmpty()) {
            return List.of(Judge.notFor(own, SITE));
        }
        Optional<MainShutoff> main = house.plan().site().flatMap(Site::mainShutoff);
        Fact<Boolean> outdoors = main.map(MainShutoff::outdoors).orElse(Fact.unknown());
        Fact<Boolean> reachable = main.map(MainShutoff::reachable).orElse(Fact.unknown());
        if (no(outdoors)) {
            return List.of(Judge.broken(
                    own,
                    SITE,
                    "the main shutoff of {who} is not outdoors " + EntryName.entered("outdoors", outdoors),
                    "Add a main shutoff outdoors where the gas enters {who}.",
                    "/site/mainShutoff/outdoors"));
        }
        if (no(reachable)) {
            return List.of(Judge.broken(
                    own,
                    SITE,
                    "the main shutoff of {who} cannot be reached " + EntryName.entered("reachable", reachable),
                    "Move the main shutoff of {who} to where a hand reaches it.",
                    "/site/mainShutoff/reachable"));
        }
        if (outdoors.isKnown() && reachable.isKnown()) {
            return List.of(Judge.holds(own, SITE));
        }
        return List.of(Judge.asks(
                own,
                SITE,
                "whether {who} has a main shutoff outdoors that can be reached is not entered",
                Question.fitter("Where is the main shutoff of {who}: outdoors, and within reach?"),
                "/site/mainShutoff/" + (outdoors.isKnown() ? "reachable" : "outdoors")));
    }

    private static boolean no(Fact<Boolean> fact) {
        return fact.is(false) || fact.isNone();
    }
}
