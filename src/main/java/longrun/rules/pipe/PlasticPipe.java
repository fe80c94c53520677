package longrun.rules.pipe;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.finding.EntryName;
import longrun.plan.Appliance;
import longrun.plan.Section;
import longrun.plan.Section.Pass;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Material;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Under;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/**
 * Topic plastic pipe: polyethylene lies outdoors in the ground, and never in, through or under a building. It comes up
 * only in an anodeless riser, and passes an outside wall only inside metal at a wall-head adapter (PI-11).
 */
public final class PlasticPipe extends SectionRule {

    private static final Set<Material> PLASTIC = Set.of(Material.PE_PIPE, Material.PE_TUBING);

    /** What may stand outdoors at the head of a riser; every other kind is reached by pipe in the house. */
    private static final Set<ApplianceKind> OUTDOORS = EnumSet.of(
            ApplianceKind.OUTDOOR_GRILL,
            ApplianceKind.STANDBY_GENERATOR,
            ApplianceKind.POOL_HEATER,
            ApplianceKind.LIGHT);

    private static final String METAL_INDOORS =
            "End the polyethylene outdoors at a riser and go on in steel, copper or corrugated tubing.";

    @Override
    public String name() {
        return "pipe-plastic-indoors";
    }

    @Override
    public Verdict judge(House house, Threshold own, Section section, Place place) {
        if (!section.material().is(PLASTIC::contains)) {
            return Judge.notFor(own, place);
        }
        if (section.setting().isNone() || section.setting().is(s -> s != Setting.UNDERGROUND)) {
            return broken(
                    own,
                    place,
                    "does not lie in the ground " + EntryName.entered("setting", section.setting()),
                    "setting");
        }
        if (section.under().is(u -> u == Under.BUILDING || u == Under.SLAB)) {
            return broken(
                    own,
                    place,
                    "lies under a building or its slab " + EntryName.entered("under", section.under()),
                    "under");
        }
        return passing(own, section, place)
                .or(() -> indoorEnd(house, own, section, place))
                .orElseGet(() -> unknown(own, section, place));
    }

    /** A wall or floor it passes other than in metal at a wall-head adapter. */
    private static Optional<Verdict> passing(Threshold own, Section section, Place place) {
        List<Pass> passes = section.passes().findValue().orElse(List.of());
        for (int i = 0; i < passes.size(); i++) {
            Pass pass = passes.get(i);
            String field = "passes/" + i;
            String what = pass.what().findText().orElse("something not entered");
            if (!hasEnd(section, "wall-head") || !what.equals("outside-wall")) {
                return Optional.of(broken(own, place, "passes " + what.replace('-', ' ') + " (passes)", field));
            }
            if (pass.sleeved().is(false) || pass.sealed().is(false)) {
                return Optional.of(
                        broken(own, place, "passes an outside wall outside its metal sleeve or unsealed", field));
            }
            if (!pass.sleeved().isKnown() || !pass.sealed().isKnown()) {
                return Optional.of(Judge.asks(
                        own,
                        place,
                        "{who} is polyethylene and passes an outside wall; whether inside metal and sealed is not"
                                + " entered",
                        Question.fitter("Does {who} pass the wall inside metal pipe, and is the gap sealed?"),
                        place.pointer() + "/" + field + (pass.sleeved().isKnown() ? "/sealed" : "/sleeved")));
            }
        }
        return Optional.empty();
    }

    /** Plastic that ends at an appliance is plastic in the house, unless the appliance is known to stand outdoors. */
    private static Optional<Verdict> indoorEnd(House house, Threshold own, Section section, Place place) {
        for (Appliance a : house.network().listFedBy(section.id())) {
            if (a.kind().is(OUTDOORS::contains)) {
                continue;
            }
            String called = house.called(a);
            if (!a.kind().isKnown() && hasEnd(section, "riser")) {
                return Optional.of(Judge.asks(
                        own,
                        place,
                        "{who} is polyethylene and ends at " + called + ", whose kind is not entered",
                        Question.plate("What kind of appliance is " + called + ", and does it stand outdoors?"),
                        house.network().findPointer(a.id()).orElse(place.pointer()) + "/kind"));
            }
            return Optional.of(broken(
                    own,
                    place,
                    "goes all the way to " + called
                            + (a.kind().isKnown() ? "" : ", which is not entered as one that stands outdoors")
                            + " " + EntryName.entered("material", section.material()),
                    "material"));
        }
        return Optional.empty();
    }

    private static Verdict unknown(Threshold own, Section section, Place place) {
        if (section.setting().isUnknown()) {
            return Judge.asks(
                    own,
                    place,
                    "{who} is polyethylene, and where it lies is not entered",
                    Question.fitter(
                            "Does {who}, which is polyethylene, lie outdoors in the ground for all its length?"),
                    place.pointer() + "/setting");
        }
        if (section.under().isUnknown()) {
            return Judge.asks(
                    own,
                    place,
                    "{who} is polyethylene, and whether it lies under a building or a slab is not entered",
                    Question.fitter("Does {who} pass under a building, a slab or a drive anywhere?"),
                    place.pointer() + "/under");
        }
        if (section.passes().isUnknown() && !comesUpOutdoors(section)) {
            return Judge.asks(
                    own,
                    place,
                    "{who} is polyethylene, and whether it passes a wall or floor is not entered",
                    Question.fitter(
                            "Does {who} end outdoors in a riser at both ends, or does it pass a wall or floor?"),
                    place.pointer() + "/passes");
        }
        return Judge.holds(own, place);
    }

    private static boolean comesUpOutdoors(Section section) {
        List<String> ends = section.ends().findValue().orElse(List.of());
        return ends.size() >= 2 && ends.stream().allMatch(e -> e.contains("riser"));
    }

    private static boolean hasEnd(Section section, String word) {
        return section.ends().findValue().orElse(List.of()).stream().anyMatch(e -> e.contains(word));
    }

    private static Verdict broken(Threshold own, Place place, String what, String field) {
        return Judge.broken(
                own, place, "{who} is polyethylene and " + what, METAL_INDOORS, place.pointer() + "/" + field);
    }
}
