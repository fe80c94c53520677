package longrun.rules.pipe;

import java.util.List;
import java.util.Set;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Section;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/**
 * Where buried polyethylene ends it comes up in an anodeless riser, goes through the wall in a wall-head adapter, or
 * changes to metal below ground in a transition fitting (PI-11, PI-16). Where it goes on as polyethylene it has no end.
 */
final class PlasticRiser extends SectionRule {

    private static final Set<String> FIT =
            Set.of("anodeless-riser", "wall-head", "wall-head-adapter", "transition", "transition-fitting");
    private static final Set<String> GOES_ON = Set.of("plastic", "fused", "polyethylene");

    @Override
    public String name() {
        return "pipe-plastic-riser";
    }

    @Override
    public Verdict judge(House house, Threshold own, Section section, Place place) {
        if (!section.material().isKnown()) {
            return Verdict.of(name(), place, State.ASKS); // asked with the sizes
        }
        int needed = Continues.endsOf(house, section.id());
        if (!section.material().is(m -> m.isPlastic()) || needed == 0) {
            return Judge.notFor(own, place);
        }
        String field = place.pointer() + "/ends";
        Fact<List<String>> ends = section.ends();
        if (ends.isNone() || ends.is(List::isEmpty)) {
            return Judge.broken(
                    own, place, "no riser is at the ends of {who} " + EntryName.entered("ends", "none"), MEND, field);
        }
        List<String> entered = ends.findValue().orElse(List.of());
        for (String end : entered) {
            if (!FIT.contains(end) && !GOES_ON.contains(end) && !end.equals("riser")) {
                return Judge.broken(
                        own,
                        place,
                        "an end of {who} is not brought up in an anodeless riser " + EntryName.entered("ends", end),
                        MEND,
                        field);
            }
        }
        if (entered.stream().filter(FIT::contains).count() >= needed) {
            return Judge.holds(own, place);
        }
        return Judge.asks(
                own,
                place,
                "how the ends of {who}, which {is|are} polyethylene, come out of the ground is not entered",
                Question.fitter("Does polyethylene come up in an anodeless riser at each end of {who}?"),
                field);
    }

    private static final String MEND =
            "Bring the polyethylene up in an anodeless riser, or change to metal below ground in a transition fitting.";
}
