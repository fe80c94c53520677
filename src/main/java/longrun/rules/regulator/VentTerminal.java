package longrun.rules.regulator;

import java.util.ArrayList;
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
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * From a regulator's relief to the end of an appliance's vent (VT-01): 5 ft where the appliance is direct-vent, whose
 * terminal is an opening of the burner's air (TR-06), 3 ft for other fan vents. It may be entered at the regulator or at
 * the appliance: one distance, of which the smaller counts and is told where it was entered.
 */
final class VentTerminal {

    private static final String AT_REGULATOR = "regulator-vent-terminal";
    private static final String AT_APPLIANCE = "vent-terminal";
    private static final String FAN = "fan";

    private final House house;
    private final List<Appliance> appliances;
    private final List<Regulators.At> regulators;
    private final List<Regulators.At> perhaps;
    private final boolean direct;
    private final boolean fan;
    private final boolean unknown;
    private final boolean everyDirectFar;

    private VentTerminal(House house) {
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

    private static boolean isVentOutdoors(Regulator r) {
        return r.kind().isKnown()
                && !(r.kind().is(RegulatorKind.LINE) && !r.setting().is(Setting.OUTDOORS));
    }

    /** Not known to vent outdoors, and not known not to. */
    private static boolean mayVentOutdoors(Regulator r) {
        return !r.kind().isKnown()
                || (r.kind().is(RegulatorKind.LINE) && !r.setting().isKnown());
    }

    /** Only a house with a vent terminal through its wall, or one whose vents are not all entered. */
    private boolean hasTerminal() {
        return direct || fan || unknown;
    }

    private Threshold limit(String rule, String variant) {
        return house.limits().get(rule, variant);
    }

    /** What the regulator's own entry says; empty where it says nothing. */
    private Optional<State> own(Fact<Distance> measured) {
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
    private Optional<State> own(Appliance a) {
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
    private State bySide(List<Optional<State>> others) {
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
    private List<Optional<State>> atRegulators() {
        Stream<Optional<State>> sure =
                regulators.stream().map(at -> own(at.regulator().ventToVentTerminal()));
        Stream<Optional<State>> open = perhaps.stream()
                .map(at -> own(at.regulator().ventToVentTerminal()).map(s -> s == State.BROKEN ? State.ASKS : s));
        return Stream.concat(sure, open).toList();
    }

    private static double feet(Fact<Distance> measured) {
        return measured.findValue().map(d -> d.length().rounded().feet()).orElse(Double.MAX_VALUE);
    }

    private double smallestAtRegulators() {
        return regulators.stream()
                .filter(at -> own(at.regulator().ventToVentTerminal())
                        .filter(State.BROKEN::equals)
                        .isPresent())
                .mapToDouble(at -> feet(at.regulator().ventToVentTerminal()))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private double smallestAtAppliances() {
        return appliances.stream()
                .filter(a -> own(a).filter(State.BROKEN::equals).isPresent())
                .mapToDouble(a -> feet(a.terminalToRegulator()))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private String found(Fact<Distance> measured, String words) {
        return words.replace("{entered}", measured.findText().orElse(""));
    }

    /** Told at the regulator. */
    static final class AtRegulator implements Rule {

        @Override
        public String name() {
            return AT_REGULATOR;
        }

        @Override
        public List<Verdict> judge(House house) {
            VentTerminal all = new VentTerminal(house);
            double atAppliances = all.smallestAtAppliances();
            State side = all.bySide(all.appliances.stream().map(all::own).toList());
            List<Verdict> verdicts = new ArrayList<>();
            for (Regulators.At at : Regulators.listIn(house)) {
                Threshold main = all.limit(name(), all.direct || all.unknown ? "" : FAN);
                if (!at.regulator().kind().isKnown()) {
                    verdicts.add(
                            Regulators.<Regulator>askKind(at).findSettled(main).orElseThrow());
                } else if (!all.hasTerminal()) {
                    verdicts.add(Judge.notFor(main, at.place()));
                } else if (mayVentOutdoors(at.regulator())) {
                    verdicts.add(perhaps(all, main, at, side, atAppliances));
                } else if (!isVentOutdoors(at.regulator())) {
                    verdicts.add(Judge.notFor(main, at.place()));
                } else {
                    verdicts.add(judge(all, main, at, side, atAppliances));
                }
            }
            return verdicts;
        }

        /** A line regulator whose place is not entered: far enough outdoors is far enough. */
        private static Verdict perhaps(
                VentTerminal all, Threshold main, Regulators.At at, State side, double atAppliances) {
            Fact<Distance> measured = at.regulator().ventToVentTerminal();
            boolean theirs = all.regulators.isEmpty() && atAppliances < feet(measured);
            return all.own(measured).orElse(side) == State.HOLDS && !theirs
                    ? Judge.holds(main, at.place())
                    : Judge.asks(
                            main,
                            at.place(),
                            "whether {who} is outdoors, where its vent keeps away from an appliance's vent terminal, is"
                                    + " not entered",
                            Question.fitter("Is {who} indoors or outdoors?"),
                            at.place().pointer() + "/setting");
        }

        private static Verdict judge(
                VentTerminal all, Threshold main, Regulators.At at, State side, double atAppliances) {
            Fact<Distance> measured = at.regulator().ventToVentTerminal();
            Optional<State> own = all.own(measured);
            String field = at.place().pointer() + "/ventToVentTerminal";
            Question question = Question.fitter(
                    "How far is the relief outlet of {who} from the nearest vent terminal of an appliance, or is there"
                            + " none?");
            if (own.isEmpty()) {
                return switch (side) {
                    case HOLDS -> Judge.holds(main, at.place());
                    case BROKEN -> Judge.brokenElsewhere(main, at.place());
                    default ->
                        Judge.asks(
                                main,
                                at.place(),
                                "how far the vent of {who} is from the nearest vent terminal of an appliance is not"
                                        + " entered",
                                question,
                                field);
                };
            }
            boolean theirs = all.regulators.size() == 1 && atAppliances < feet(measured);
            return switch (own.get()) {
                case HOLDS -> theirs ? Judge.brokenElsewhere(main, at.place()) : Judge.holds(main, at.place());
                case BROKEN ->
                    theirs
                            ? Judge.brokenElsewhere(main, at.place())
                            : Judge.broken(
                                    main,
                                    at.place(),
                                    all.found(
                                            measured,
                                            "the vent of {who} is {entered} from an appliance's vent terminal"),
                                    "Move the vent of {who} to {limit} or more from the vent terminal, or pipe it"
                                            + " there.",
                                    field);
                default -> {
                    boolean mixed = all.fan || all.unknown;
                    yield Judge.asks(
                            main,
                            at.place(),
                            all.found(measured, "the vent of {who} is {entered} from the nearest vent terminal")
                                    + (mixed ? "; whether that is a direct-vent one is not clear" : ""),
                            mixed
                                    ? Question.fitter("How far is {who} from the nearest direct-vent terminal?")
                                    : question,
                            mixed ? all.fieldThatDecides(field) : field);
                }
            };
        }
    }

    /** The first entry at an appliance that says how far its direct-vent terminal is. */
    private String fieldThatDecides(String otherwise) {
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

    /** Told at the appliance, where the smaller distance was entered there. */
    static final class AtAppliance implements Rule {

        @Override
        public String name() {
            return AT_APPLIANCE;
        }

        @Override
        public List<Verdict> judge(House house) {
            VentTerminal all = new VentTerminal(house);
            double atRegulators = all.smallestAtRegulators();
            State side = all.bySide(all.atRegulators());
            List<Verdict> verdicts = new ArrayList<>();
            for (int i = 0; i < all.appliances.size(); i++) {
                Appliance a = all.appliances.get(i);
                Place place = new Place(a.id(), "/appliances/" + i, a.called());
                Threshold main = all.limit(name(), a.vent().is(ApplianceVent.FAN) ? FAN : "");
                State own = all.regulators.isEmpty() && all.perhaps.isEmpty()
                        ? State.NOT_FOR_THIS_PLAN
                        : all.own(a).orElse(side);
                if (own == State.BROKEN && all.regulators.isEmpty()) {
                    verdicts.add(Verdict.of(name(), place, State.ASKS)); // asked at the regulator
                    continue;
                }
                boolean entered = a.terminalToRegulator().isKnown();
                boolean told = entered && atRegulators > feet(a.terminalToRegulator());
                verdicts.add(
                        switch (own) {
                            case HOLDS -> Judge.holds(main, place);
                            case BROKEN -> told ? broken(all, main, place, a) : Judge.brokenElsewhere(main, place);
                            case ASKS ->
                                entered
                                        ? asksVent(all, main, place, a)
                                        : Verdict.of(name(), place, State.ASKS); // asked at the regulator
                            default -> Judge.notFor(main, place);
                        });
            }
            return verdicts;
        }

        private static Verdict broken(VentTerminal all, Threshold main, Place place, Appliance a) {
            return Judge.broken(
                    main,
                    place,
                    all.found(a.terminalToRegulator(), "the vent of {who} ends {entered} from a regulator's vent"),
                    "Move the end of its vent or the regulator's vent, so that {limit} or more is between them.",
                    place.pointer() + "/terminalToRegulator");
        }

        private static Verdict asksVent(VentTerminal all, Threshold main, Place place, Appliance a) {
            boolean open = a.vent().isUnknown();
            return Judge.asks(
                    main,
                    place,
                    all.found(a.terminalToRegulator(), "the vent of {who} ends {entered} from a regulator's vent")
                            + (open ? "; whether it is a direct-vent one is not entered" : ""),
                    open
                            ? Question.plate("Is {who} direct-vent, with its air from outdoors, or vented by a fan?")
                            : Question.fitter(
                                    "How far is the end of the vent of {who} from the nearest regulator's vent?"),
                    place.pointer() + (open ? "/vent" : "/terminalToRegulator"));
        }
    }
}
