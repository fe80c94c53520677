package longrun.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longrun.plan.Material;
import longrun.plan.Section;
import longrun.plan.Setting;

/** Topic plastic pipe: polyethylene lies outdoors in the ground, and never in, through or under a building. */
final class PlasticPipe implements Rule {

    private static final Set<Material> PLASTIC = Set.of(Material.PE_PIPE, Material.PE_TUBING);

    @Override
    public String name() {
        return "pipe-plastic-indoors";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            verdicts.add(judge(own, sections.get(i), i));
        }
        return verdicts;
    }

    private static Verdict judge(Threshold own, Section section, int index) {
        Place place = new Place(section.id(), "/sections/" + index, "section " + section.id());
        String field = place.pointer() + "/setting";
        if (!section.material().is(PLASTIC::contains)) {
            return Tell.notFor(own, place);
        }
        if (section.setting().isUnknown()) {
            return Tell.asks(
                    own,
                    place,
                    "{who} is polyethylene, and where it lies is not entered",
                    Question.fitter(
                            "Does {who}, which is polyethylene, lie outdoors in the ground for all its length?"),
                    field);
        }
        if (section.setting().is(Setting.UNDERGROUND)) {
            return Tell.holds(own, place);
        }
        return Tell.broken(
                own,
                place,
                "{who} is polyethylene and does not lie in the ground (setting: "
                        + section.setting().findText().orElse("") + ")",
                "End the polyethylene outdoors at a riser and go on in steel, copper or corrugated tubing.",
                field);
    }
}
