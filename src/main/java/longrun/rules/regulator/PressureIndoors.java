package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Under;
import longrun.quantity.Pressure;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * No pipe inside a house carries more than 5 psi (RG-10): judged by the setting of the stage a section belongs to and by
 * where it lies, whatever the regulator is called. Told once a stage, since one regulator outdoors mends all of it.
 */
public final class PressureIndoors implements Rule {

    private static final double GREATEST_PSI = 5;
    private static final double SLACK = 1e-9;
    private static final int NAMED = 4;

    @Override
    public String name() {
        return "pressure-indoors";
    }

    /** Where a section, or what it ends at, is entered as within the house: the entry and its words. */
    private record Inside(Place place, String field, String words) {}

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        Map<String, List<Inside>> inside = new LinkedHashMap<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Place place = house.section(i);
            Optional<Regulator> ahead = house.network().findRegulatorAhead(section.id());
            if (ahead.isEmpty()) {
                verdicts.add(Judge.notFor(own, place)); // what it leaves is asked where it is entered
            } else {
                verdicts.add(judge(house, own, section, place, ahead.get(), inside));
            }
        }
        inside.forEach((regulator, all) -> tell(house, own, regulator, all, verdicts));
        return verdicts;
    }

    private static Verdict judge(
            House house,
            Threshold own,
            Section section,
            Place place,
            Regulator ahead,
            Map<String, List<Inside>> inside) {
        Optional<Inside> within = findInside(house, section, place);
        Optional<Pressure> set = ahead.outlet().findValue();
        boolean low = set.filter(p -> p.psi() <= GREATEST_PSI + SLACK).isPresent();
        Optional<Regulator> end = house.network()
                .findRegulatorAtEndOf(section.id())
                .filter(r -> !r.setting().isKnown());
        boolean outside = within.isEmpty() && isOutside(section);
        if (low || (outside && end.isEmpty())) {
            return Judge.holds(own, place);
        }
        if (set.isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "what the regulator " + ahead.id() + " ahead of {who} is set to is not entered",
                    Question.supplier("What outlet pressure is the regulator " + ahead.id() + " set to?"),
                    house.network().findPointer(ahead.id()).orElse(place.pointer()) + "/outlet");
        }
        if (within.isPresent()) {
            inside.computeIfAbsent(ahead.id(), r -> new ArrayList<>()).add(within.get());
            return Judge.brokenElsewhere(own, place);
        }
        if (outside) {
            return Judge.asks(
                    own,
                    place,
                    "{who} carries " + ahead.outlet().findText().orElse("") + " and ends at "
                            + end.orElseThrow().id() + "; whether that is outdoors is not entered",
                    Question.fitter("Is " + end.orElseThrow().id() + " outdoors?"),
                    house.network().findPointer(end.orElseThrow().id()).orElse(place.pointer()) + "/setting");
        }
        boolean buried = section.setting().is(Setting.UNDERGROUND);
        return Judge.asks(
                own,
                place,
                "{who} carries " + ahead.outlet().findText().orElse("") + ", and whether it lies "
                        + (buried ? "under a building" : "indoors") + " is not entered",
                buried
                        ? Question.fitter("Does {who} pass under a building, a slab or a drive anywhere?")
                        : Question.fitter("Does {who} run outdoors, in the ground, indoors or concealed?"),
                place.pointer() + (buried ? "/under" : "/setting"));
    }

    /** The first section of a stage tells of all that run indoors. */
    private static void tell(House house, Threshold own, String regulator, List<Inside> all, List<Verdict> verdicts) {
        Inside first = all.get(0);
        List<String> others =
                all.stream().skip(1).limit(NAMED).map(i -> i.place().at()).toList();
        int unnamed = all.size() - 1 - others.size();
        String set = house.network()
                .findRegulator(regulator)
                .flatMap(r -> r.outlet().findText())
                .orElse("");
        String found = "{who} " + first.words() + " and carries " + set + ", the setting of " + regulator
                + (others.isEmpty() ? "" : "; so do " + String.join(", ", others))
                + (unnamed > 0 ? " and " + unnamed + " more" : "");
        verdicts.replaceAll(v -> v.state().pointer().equals(first.place().pointer())
                ? Judge.broken(
                        own,
                        first.place(),
                        found,
                        "Set a second-stage or 2 psi regulator outdoors before the pipe enters, or keep this pipe"
                                + " outdoors.",
                        first.field())
                : v);
    }

    private static Optional<Inside> findInside(House house, Section section, Place place) {
        if (isIndoors(section.setting())) {
            return Optional.of(new Inside(
                    place,
                    place.pointer() + "/setting",
                    "is inside the house " + EntryName.entered("setting", section.setting())));
        }
        if (section.under().is(u -> u == Under.BUILDING || u == Under.SLAB)) {
            return Optional.of(new Inside(
                    place,
                    place.pointer() + "/under",
                    "lies under the house " + EntryName.entered("under", section.under())));
        }
        return house.network()
                .findRegulatorAtEndOf(section.id())
                .filter(r -> isIndoors(r.setting()))
                .map(r -> new Inside(
                        place,
                        house.network().findPointer(r.id()).orElse(place.pointer()) + "/setting",
                        "ends at " + r.id() + " inside the house "
                                + EntryName.entered("regulators/setting", r.setting())));
    }

    private static boolean isOutside(Section section) {
        return section.setting().is(Setting.OUTDOORS)
                || (section.setting().is(Setting.UNDERGROUND)
                        && !section.under().isUnknown());
    }

    private static boolean isIndoors(Fact<Setting> setting) {
        return setting.is(s -> s == Setting.INDOORS || s == Setting.CONCEALED);
    }
}
