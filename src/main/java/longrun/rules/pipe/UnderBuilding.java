package longrun.rules.pipe;

import longrun.finding.EntryName;
import longrun.plan.Section;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Under;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/** Buried pipe passes under a building or its slab only in a vented conduit (PI-10); plastic not at all (PI-11). */
final class UnderBuilding extends SectionRule {

    private static final double GREATEST_PSI = 5; // RG-10
    private static final double SLACK = 1e-9;

    @Override
    public String name() {
        return "pipe-under-building";
    }

    @Override
    public Verdict judge(House house, Threshold own, Section section, Place place) {
        String field = place.pointer() + "/under";
        if (section.under().is(u -> u == Under.BUILDING || u == Under.SLAB)) {
            if (section.material().is(m -> m.isPlastic()) || carriesTooMuch(house, section)) {
                return Judge.brokenElsewhere(own, place); // told as plastic, or by its pressure
            }
            return Judge.brokenAsking(
                    own,
                    place,
                    "{who} {lies|lie} under a building or its slab " + EntryName.entered("under", section.under()),
                    "Lay it round the building, or bring it in above ground; else in a conduit vented above grade.",
                    Question.inspector("Is a vented conduit accepted for {who}, and how must its ends be?"),
                    field);
        }
        if (section.setting().isUnknown()) {
            return Sections.askSetting(own, place);
        }
        if (!section.setting().is(Setting.UNDERGROUND)) {
            return Judge.notFor(own, place);
        }
        return section.under().isUnknown()
                ? Judge.asks(
                        own,
                        place,
                        "whether anything is built over {who} is not entered",
                        Question.fitter("{Does|Do} {who} pass under a building, a slab or a drive anywhere?"),
                        field)
                : Judge.holds(own, place);
    }

    /** More than any pipe under a house carries: told as that, and mended by the same entry. */
    private static boolean carriesTooMuch(House house, Section section) {
        return house.network()
                .findRegulatorAhead(section.id())
                .filter(r -> r.outlet().is(p -> p.psi() > GREATEST_PSI + SLACK))
                .isPresent();
    }
}
