package longrun.piping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.ApplianceKind;
import longrun.quantity.HeatRate;

/** What serves what, asked by the ids that a plan gives its parts. An id that is nowhere is answered with nothing. */
public final class Network {

    private final Piping piping;
    private final Plan plan;
    private final Forest forest;
    private final Map<String, Integer> appliances = new HashMap<>();
    private final Served[] bySection;
    private final Served[] byRegulator;

    Network(Piping piping, Forest forest) {
        this.piping = piping;
        this.plan = piping.plan();
        this.forest = forest;
        for (int i = 0; i < plan.appliances().size(); i++) {
            appliances.putIfAbsent(plan.appliances().get(i).id(), i);
        }
        bySection = new Served[plan.sections().size()];
        byRegulator = new Served[plan.regulators().size()];
        Served loose = loose();
        int[] order = forest.feedersFirst();
        for (int k = order.length - 1; k >= 0; k--) {
            int section = order[k];
            Served served = own(section);
            for (int child : forest.children(section)) {
                served = served.plus(bySection[child]);
            }
            int regulator = forest.regulatorOn(section);
            bySection[section] = regulator < 0 ? served : served.plus(behind(regulator, loose));
        }
        for (int r = 0; r < byRegulator.length; r++) {
            byRegulator[r] = behind(r, loose);
        }
    }

    /** What hangs on nothing could hang on any regulator. */
    private Served loose() {
        for (int i = 0; i < plan.appliances().size(); i++) {
            if (!plan.appliances().get(i).fedBy().isKnown()) {
                return Served.loose("/appliances/" + i + "/fedBy");
            }
        }
        for (int i = 0; i < plan.sections().size(); i++) {
            if (!plan.sections().get(i).from().isKnown()) {
                return Served.loose("/sections/" + i + "/from");
            }
        }
        return Served.NOTHING;
    }

    private Served behind(int regulator, Served loose) {
        Served served = loose;
        for (int section : forest.sectionsLeaving(regulator)) {
            served = served.plus(bySection[section]);
        }
        return served;
    }

    private Served own(int section) {
        int appliance = forest.applianceOn(section);
        if (appliance >= 0) {
            return taken(plan.appliances().get(appliance), "/appliances/" + appliance + "/input");
        }
        return feedsNothing(section)
                ? reserve(plan.sections().get(section), "/sections/" + section + "/reserve")
                : Served.NOTHING;
    }

    private static Served taken(Appliance appliance, String pointer) {
        boolean grill = appliance.kind().is(ApplianceKind.OUTDOOR_GRILL);
        return appliance
                .input()
                .findValue()
                .map(rate -> new Served(rate, Optional.empty(), 1, grill))
                .orElse(new Served(HeatRate.ZERO, Optional.of(pointer), 1, grill));
    }

    /** Counts whether or not the end is capped, as it does in the pipe's load. */
    private static Served reserve(Section section, String pointer) {
        return section.reserve()
                .fold(
                        rate -> new Served(rate, Optional.empty(), 0, false),
                        () -> Served.NOTHING,
                        () -> Served.unknown(pointer));
    }

    private boolean feedsNothing(int section) {
        return forest.children(section).isEmpty() && forest.applianceOn(section) < 0 && forest.regulatorOn(section) < 0;
    }

    /** JSON pointer of a regulator, or of an appliance or section, by its id. */
    public Optional<String> findPointer(String id) {
        Integer appliance = appliances.get(id);
        if (appliance != null) {
            return Optional.of("/appliances/" + appliance);
        }
        OptionalInt section = forest.findSection(id);
        if (section.isPresent()) {
            return Optional.of("/sections/" + section.getAsInt());
        }
        OptionalInt regulator = forest.findRegulator(id);
        return regulator.isPresent() ? Optional.of("/regulators/" + regulator.getAsInt()) : Optional.empty();
    }

    public Optional<Section> findSection(String id) {
        return forest.findSection(id).stream().mapToObj(plan.sections()::get).findFirst();
    }

    public Optional<Regulator> findRegulator(String id) {
        return forest.findRegulator(id).stream()
                .mapToObj(plan.regulators()::get)
                .findFirst();
    }

    /** The regulator whose outlet feeds this regulator or section. */
    public Optional<Regulator> findRegulatorAhead(String id) {
        OptionalInt section = forest.findSection(id);
        if (section.isPresent()) {
            return piping.findStage(section.getAsInt()).map(Stage::regulator);
        }
        OptionalInt regulator = forest.findRegulator(id);
        int stage = regulator.isPresent() ? piping.stageFeeding(regulator.getAsInt()) : -1;
        return stage < 0
                ? Optional.empty()
                : Optional.of(piping.stages().get(stage).regulator());
    }

    /** The sections that leave a regulator directly. */
    public List<Section> listLeaving(String regulator) {
        return forest.findRegulator(regulator).stream()
                .boxed()
                .flatMap(r -> forest.sectionsLeaving(r).stream())
                .map(plan.sections()::get)
                .toList();
    }

    /** The appliance at the end of a section. */
    public List<Appliance> listFedBy(String section) {
        return forest.findSection(section).stream()
                .map(forest::applianceOn)
                .filter(a -> a >= 0)
                .mapToObj(plan.appliances()::get)
                .toList();
    }

    /** The regulator at the end of a section. */
    public Optional<Regulator> findRegulatorAtEndOf(String section) {
        OptionalInt at = forest.findSection(section);
        int regulator = at.isPresent() ? forest.regulatorOn(at.getAsInt()) : -1;
        return regulator < 0 ? Optional.empty() : Optional.of(plan.regulators().get(regulator));
    }

    /** Whether nothing leaves a section or hangs on it. */
    public boolean feedsNothing(String section) {
        return forest.findSection(section).stream().anyMatch(this::feedsNothing);
    }

    /** What a regulator or a section feeds, all stages after it included. */
    public Served servedBy(String id) {
        OptionalInt section = forest.findSection(id);
        if (section.isPresent()) {
            return bySection[section.getAsInt()];
        }
        OptionalInt regulator = forest.findRegulator(id);
        return regulator.isPresent() ? byRegulator[regulator.getAsInt()] : Served.NOTHING;
    }

    /** The side of the stage that a regulator, or the regulator ahead of a section, feeds. */
    public Side sideOf(String id) {
        OptionalInt section = forest.findSection(id);
        if (section.isPresent()) {
            return piping.findStage(section.getAsInt()).map(Stage::side).orElse(Side.UNKNOWN);
        }
        OptionalInt regulator = forest.findRegulator(id);
        return regulator.isPresent() ? piping.stages().get(regulator.getAsInt()).side() : Side.UNKNOWN;
    }

    /**
     * JSON pointer of the kind that must be entered before the side of a section is known: of the regulator ahead of it,
     * else of the nearest one after it that has none. Empty where the side is known or nothing feeds the section.
     */
    public Optional<String> findKindMissing(String section) {
        OptionalInt at = forest.findSection(section);
        int ahead = at.isPresent()
                ? piping.findStage(at.getAsInt()).map(Stage::regulatorIndex).orElse(-1)
                : -1;
        List<Integer> found = ahead < 0 ? List.of() : new ArrayList<>(List.of(ahead));
        for (int k = 0; k < found.size(); k++) {
            int regulator = found.get(k);
            if (!plan.regulators().get(regulator).kind().isKnown()) {
                return Optional.of("/regulators/" + regulator + "/kind");
            }
            piping.stages().get(regulator).sections().stream()
                    .map(forest::regulatorOn)
                    .filter(next -> next >= 0)
                    .forEach(found::add);
        }
        return Optional.empty();
    }
}
