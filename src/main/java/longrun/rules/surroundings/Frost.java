package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.finding.EntryName;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Site;
import longrun.plan.Use;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.ApplianceVent;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Water in and from an appliance: its condensate (CD-01), and what frost does when the power is out (FR-01). */
final class Frost {

    private Frost() {}

    static List<Rule> rules() {
        return List.of(AskedOnce.ofAppliances(new Drain()), AskedOnce.ofAppliances(new FreezePower()));
    }

    /** A condensing appliance drains. */
    private static final class Drain implements Rule {

        /** Common practice: from here on exhaust is cool enough to condense. */
        private static final double CONDENSES_PERCENT = 90;

        private static final Set<ApplianceKind> MAY_CONDENSE = EnumSet.of(
                ApplianceKind.FURNACE,
                ApplianceKind.BOILER,
                ApplianceKind.ON_DEMAND_WATER_HEATER,
                ApplianceKind.STORAGE_WATER_HEATER);

        @Override
        public String name() {
            return "condensate";
        }

        @Override
        public List<Verdict> judge(House house) {
            Threshold own = house.limits().get(name(), "");
            List<Verdict> verdicts = new ArrayList<>();
            for (int i = 0; i < house.plan().appliances().size(); i++) {
                Appliance a = house.plan().appliances().get(i);
                verdicts.add(judge(house, own, a, house.appliance(i)));
            }
            return verdicts;
        }

        private Verdict judge(House house, Threshold own, Appliance a, Place place) {
            Optional<Double> efficiency = efficiency(house, a);
            boolean condenses = efficiency.filter(e -> e >= CONDENSES_PERCENT).isPresent();
            boolean doesNot = !condenses
                    && (efficiency.isPresent()
                            || (a.kind().isKnown() && !a.kind().is(MAY_CONDENSE::contains))
                            || a.vent().isNone()
                            || a.vent().is(v -> v == ApplianceVent.DRAFT || v == ApplianceVent.NONE));
            if (a.condensate().isKnown()) {
                return Judge.holds(own, place);
            }
            if (doesNot) {
                return Judge.notFor(own, place);
            }
            if (!a.kind().isKnown()) {
                return Verdict.of(name(), place, State.ASKS); // asked with the appliance
            }
            String field = place.pointer() + "/condensate";
            if (a.condensate().isNone()) {
                return condenses
                        ? Judge.broken(
                                own,
                                place,
                                "{who}, at " + Math.round(efficiency.orElseThrow()) + " %, condenses and has no drain "
                                        + EntryName.entered("condensate", "none"),
                                "Give its condensate a drain that falls freely and does not freeze.",
                                field)
                        : Judge.holds(own, place);
            }
            return Judge.asks(
                    own,
                    place,
                    "where the condensate of {who} drains is not entered",
                    Question.fitter("Where does the condensate drain, is it neutralised, and can it freeze: {who}?"),
                    field);
        }

        /** As entered for heating or hot water, percent. */
        private static Optional<Double> efficiency(House house, Appliance a) {
            Optional<Use> use = house.plan().use();
            Optional<Double> heating = use.stream()
                    .flatMap(u -> u.heating().stream())
                    .filter(h -> h.appliance().is(a.id()))
                    .flatMap(h -> h.efficiency().findValue().stream())
                    .map(Ratio::percent)
                    .findFirst();
            return heating.or(() -> use.flatMap(Use::hotWater)
                    .flatMap(Use.HotWater::onDemand)
                    .filter(d -> d.appliance().is(a.id()))
                    .flatMap(d -> d.efficiency().findValue())
                    .map(Ratio::percent));
        }
    }

    /** An on-demand heater keeps from freezing without power, or is drained. */
    private static final class FreezePower implements Rule {

        private static final double FREEZES_F = 32;

        @Override
        public String name() {
            return "freeze-power";
        }

        @Override
        public List<Verdict> judge(House house) {
            Threshold own = house.limits().get(name(), "");
            Fact<Temperature> cold =
                    house.plan().site().map(Site::winterDesignTemp).orElse(Fact.unknown());
            List<Verdict> verdicts = new ArrayList<>();
            for (int i = 0; i < house.plan().appliances().size(); i++) {
                Appliance a = house.plan().appliances().get(i);
                verdicts.add(judge(own, a, house.appliance(i), cold));
            }
            return verdicts;
        }

        private Verdict judge(Threshold own, Appliance a, Place place, Fact<Temperature> cold) {
            if (!a.kind().isKnown()) {
                return Verdict.of(name(), place, State.ASKS); // asked with the appliance
            }
            if (!a.kind().is(ApplianceKind.ON_DEMAND_WATER_HEATER) || cold.is(t -> t.degF() > FREEZES_F)) {
                return Judge.notFor(own, place);
            }
            String field = place.pointer() + "/freezePower";
            if (a.freezePower().is(true)) {
                return Judge.holds(own, place);
            }
            return a.freezePower().isUnknown()
                    ? Judge.asks(
                            own,
                            place,
                            "whether {who} still {keeps itself|keep themselves} from freezing while the power is out is not entered",
                            Question.plate("Does the frost protection of {who} still work in a power cut?"),
                            field)
                    : Judge.broken(
                            own,
                            place,
                            "the frost protection of {who} stops with the power "
                                    + EntryName.entered("freezePower", a.freezePower()),
                            "Feed it from a battery or generator, set it in a room that stays warm, or drain it before a"
                                    + " cold night without power.",
                            field);
        }
    }
}
