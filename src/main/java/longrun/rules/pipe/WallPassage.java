package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.Section.Pass;
import longrun.plan.choice.Setting;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * What pipe passes: an outside wall in a sleeve that is sealed (PI-09, WP-01), and never a duct, chimney, vent or shaft
 * (PI-08). Asked of a section that comes in from outdoors, where nothing is entered of the wall it must pass.
 */
final class WallPassage implements Rule {

    private static final String WALL = "outside-wall";
    private static final Set<String> SHAFTS = Set.of(
            "duct",
            "air-duct",
            "clothes-chute",
            "chute",
            "chimney",
            "vent",
            "gas-vent",
            "dumbwaiter",
            "elevator-shaft");

    @Override
    public String name() {
        return "pipe-wall-passage";
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Place place = house.section(i);
            List<Pass> passes = section.passes().findValue().orElse(List.of());
            for (int p = 0; p < passes.size(); p++) {
                verdicts.add(judge(house, passes.get(p), place.inside("passes/" + p)));
            }
            if (passes.isEmpty()) {
                verdicts.add(unsaid(house, own, section, place));
            }
        }
        return verdicts;
    }

    /** Nothing entered of what it passes: asked where it comes in from outdoors, open everywhere else. */
    private Verdict unsaid(House house, Threshold own, Section section, Place place) {
        boolean comesIn = comesIn(house, section);
        if (!section.passes().isUnknown()) {
            return comesIn ? Judge.holds(own, place) : Judge.notFor(own, place);
        }
        return comesIn
                ? Judge.asks(
                        own,
                        place,
                        "where {who} {comes|come} in through the outside wall, and how, is not entered",
                        Question.fitter(
                                "{Does|Do} {who} pass an outside wall, above ground or below, sleeved and sealed?"),
                        place.pointer() + "/passes")
                : Verdict.of(name(), place, State.ASKS);
    }

    private Verdict judge(House house, Pass pass, Place place) {
        String what = pass.what().findValue().orElse("");
        if (SHAFTS.contains(what)) {
            return Judge.broken(
                    house.limits().get(name(), "shaft"),
                    place,
                    "{who} {runs|run} through a " + EntryName.spoken(what),
                    "Take the pipe round it.",
                    place.pointer() + "/what");
        }
        Threshold above = house.limits().get(name(), "");
        if (what.isEmpty()) {
            return Judge.asks(
                    above,
                    place,
                    "what {who} {passes|pass} is not entered",
                    Question.fitter("What {does|do} {who} pass through?"),
                    place.pointer() + "/what");
        }
        return what.equals(WALL) ? wall(house, pass, place, above) : Judge.notFor(above, place);
    }

    private Verdict wall(House house, Pass pass, Place place, Threshold above) {
        Threshold own = pass.belowGrade().is(true) ? house.limits().get(name(), "below-grade") : above;
        String where = pass.belowGrade().is(true) ? "below the ground" : "";
        Optional<String> lacks = no(pass.sleeved())
                ? Optional.of("sleeved")
                : no(pass.sealed()) ? Optional.of("sealed") : Optional.empty();
        if (lacks.isPresent()) {
            Fact<Boolean> entered = lacks.get().equals("sleeved") ? pass.sleeved() : pass.sealed();
            String found =
                    "{who} {passes|pass} an outside wall" + (where.isEmpty() ? "" : " " + where) + " and {is|are} not "
                            + lacks.get() + " there "
                            + EntryName.entered(lacks.get(), entered);
            return Judge.broken(
                    own,
                    place,
                    found,
                    "Put it in a sleeve and seal the gap between pipe, sleeve and wall.",
                    place.pointer() + "/" + lacks.get());
        }
        if (pass.sleeved().isKnown() && pass.sealed().isKnown()) {
            return Judge.holds(own, place);
        }
        return Judge.asks(
                own,
                place,
                "whether {who} {is|are} sleeved and sealed where {it passes|they pass} an outside wall is not entered",
                Question.fitter(
                        "{Is|Are} {who} in a sleeve where {it passes|they pass} the outside wall, and is the gap sealed?"),
                place.pointer() + (pass.sleeved().isKnown() ? "/sealed" : "/sleeved"));
    }

    private static boolean no(Fact<Boolean> fact) {
        return fact.is(false) || fact.isNone();
    }

    /** Indoors, fed by what is outdoors and says nothing of a wall. */
    private static boolean comesIn(House house, Section section) {
        if (!section.setting().is(s -> s == Setting.INDOORS || s == Setting.CONCEALED)) {
            return false;
        }
        Optional<Section> before = section.from().findValue().flatMap(house.network()::findSection);
        Optional<Regulator> regulator = section.from().findValue().flatMap(house.network()::findRegulator);
        boolean outside = before.map(s -> s.setting().is(x -> x == Setting.OUTDOORS || x == Setting.UNDERGROUND))
                .or(() -> regulator.map(r -> r.setting().is(x -> x == Setting.OUTDOORS || x == Setting.UNDERGROUND)))
                .orElse(false);
        return outside
                && before.filter(s -> s.passes()
                                .is(all -> all.stream().anyMatch(p -> p.what().is(WALL))))
                        .isEmpty();
    }
}
