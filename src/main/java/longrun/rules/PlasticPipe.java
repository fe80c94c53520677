package longrun.rules;

import java.util.Set;
import longrun.plan.Material;
import longrun.plan.Section;
import longrun.plan.Setting;

/** Topic plastic pipe: polyethylene lies outdoors in the ground, and never in, through or under a building. */
final class PlasticPipe extends SectionRule {

    private static final Set<Material> PLASTIC = Set.of(Material.PE_PIPE, Material.PE_TUBING);

    @Override
    public String name() {
        return "pipe-plastic-indoors";
    }

    @Override
    Verdict judge(House house, Threshold own, Section section, Place place) {
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
