package longrun.rules.regulator;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.plan.Appliance;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.choice.ApplianceVent;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.Setting;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;

/**
 * From a regulator's relief to the end of an appliance's vent (VT-01): 5 ft where the appliance is direct-vent, whose
 * terminal is an opening of the burner's air (TR-06), 3 ft for other fan vents. It may be entered at the regulator or at
 * the appliance: one distance, of which the smaller counts and is told where it was entered.
 */
final class VentTerminal {

    static final String AT_REGULATOR = "regulator-vent-terminal";
    static final String AT_APPLIANCE = "vent-terminal";
    static final String FAN = "fan";

    private final House house;
    final List<Appliance> appliances;
    final List<Regulators.At> regulators;
    final List<Regulators.At> perhaps;
    final boolean direct;
    final boolean fan;
    final boolean unknown;
    private final boolean everyDirectFar;

    VentTerminal(House house) {
        this.house = house;
        appliances = house.plan().appliances();
        regulators = Regulators.listIn(house).stream()
                .filter(at -> isVentOutdoors(at.regulator()))
                .toList();
        perhaps = Regulators.listIn(house).stream()
                .filter(at -> mayVentOutdoors(at.regulator()))
                .toList();
        direct = appliances.stream().anyMatch(a -> a.vent().is(ApplianceVent.DIRECT));
        fan = appliances.stream().anyMatch(a -> a.vent().is(ApplianceVent.FAN));
        unknown = appliances.stream().anyMatch(a -> a.vent().isUnknown());
        everyDirectFar = isEveryDirectFar();
    }

    static boolean isVentOutdoors(Regulator r) {
        return r.kind().isKnown()
                && !(r.kind().is(RegulatorKind.LINE) && !r.setting().is(Setting.OUTDOORS));
    }

    /** Not known to vent outdoors, and not known not to. */
    static boolean mayVentOutdoors(Regulator r) {
        return !r.kind().isKnown()
                || (r.kind().is(RegulatorKind.LINE) && !r.setting().isKnown());
    }

    /** Only a house with a vent terminal through its wall, or one whose vents are not all entered. */
    boolean hasTerminal() {
        return direct || fan || unknown;
    }

    Threshold limit(String rule, String variant) {
        return house.limits().get(rule, variant);
    }

    /** What the regulator's own entry says; empty where it says nothing. */
    Optional<State> own(Fact<Distance> measured) {
        return measured.fold(
                d -> {
                    State five = limit(AT_REGULATOR, "").test(d);
                    State three = limit(AT_REGULATOR, FAN).test(d);
                    if (five == three || !(fan || unknown)) {
                        return Optional.of(five);
                    }
                    if ((!direct && !unknown) || everyDirectFar) {
                        return Optional.of(three);
                    }
                    return Optional.of(three == State.BROKEN ? State.BROKEN : State.ASKS);
                },
                () -> Optional.of(State.HOLDS),
                Optional::empty);
    }

    /** Whether every terminal that is direct-vent, or may be, is known to be far enough. */
    private boolean isEveryDirectFar() {
        return appliances.stream()
                .filter(a -> a.vent().is(ApplianceVent.DIRECT) || a.vent().isUnknown())
                .allMatch(a -> a.terminalToRegulator()
                        .fold(d -> limit(AT_APPLIANCE, "").test(d) == State.HOLDS, () -> true, () -> false));
    }

    /** What the appliance's own entry says; empty where it says nothing. */
    Optional<State> own(Appliance a) {
        if (a.vent().isNone() || a.vent().is(v -> v == ApplianceVent.NONE || v == ApplianceVent.DRAFT)) {
            return Optional.of(State.NOT_FOR_THIS_PLAN);
        }
        return a.terminalToRegulator()
                .fold(
                        d -> {
                            State five = limit(AT_APPLIANCE, "").test(d);
                            State three = limit(AT_APPLIANCE, FAN).test(d);
                            boolean open = a.vent().isUnknown() && five != three && three != State.BROKEN;
                            return Optional.of(open ? State.ASKS : a.vent().is(ApplianceVent.FAN) ? three : five);
                        },
                        () -> Optional.of(State.HOLDS),
                        Optional::empty);
    }

    /** What the appliances' entries say all together, for a regulator that says nothing. */
    State bySide(List<Optional<State>> others) {
        if (others.stream().anyMatch(s -> s.filter(State.BROKEN::equals).isPresent())) {
            return State.BROKEN;
        }
        return others.stream()
                        .allMatch(s -> s.filter(x -> x == State.HOLDS || x == State.NOT_FOR_THIS_PLAN)
                                .isPresent())
                ? State.HOLDS
                : State.ASKS;
    }

    /** What the regulators' entries say all together, for an appliance that says nothing. */
    List<Optional<State>> atRegulators() {
        Stream<Optional<State>> sure =
                regulators.stream().map(at -> own(at.regulator().ventToVentTerminal()));
        Stream<Optional<State>> open = perhaps.stream()
                .map(at -> own(at.regulator().ventToVentTerminal()).map(s -> s == State.BROKEN ? State.ASKS : s));
        return Stream.concat(sure, open).toList();
    }

    static double feet(Fact<Distance> measured) {
        return measured.findValue().map(d -> d.length().rounded().feet()).orElse(Double.MAX_VALUE);
    }

    double smallestAtRegulators() {
        return regulators.stream()
                .filter(at -> own(at.regulator().ventToVentTerminal())
                        .filter(State.BROKEN::equals)
                        .isPresent())
                .mapToDouble(at -> feet(at.regulator().ventToVentTerminal()))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    double smallestAtAppliances() {
        return appliances.stream()
                .filter(a -> own(a).filter(State.BROKEN::equals).isPresent())
                .mapToDouble(a -> feet(a.terminalToRegulator()))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    String found(Fact<Distance> measured, String words) {
        return words.replace("{entered}", measured.findText().orElse(""));
    }

    /** The first entry at an appliance that says how far its direct-vent terminal is. */
    String fieldThatDecides(String otherwise) {
        for (int i = 0; i < appliances.size(); i++) {
            Appliance a = appliances.get(i);
            if (a.vent().isUnknown()) {
                return "/appliances/" + i + "/vent";
            }
            if (a.vent().is(ApplianceVent.DIRECT) && a.terminalToRegulator().isUnknown()) {
                return "/appliances/" + i + "/terminalToRegulator";
            }
        }
        return otherwise;
    }
}
