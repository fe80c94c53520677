package longrun.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.finding.Finding;
import longrun.plan.PlanPath;
import longrun.rules.code.EnteredCode;
import longrun.rules.connector.Connector;
import longrun.rules.gas.GasType;
import longrun.rules.hotwater.HotWater;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.limit.Thresholds;
import longrun.rules.pipe.PipeRules;
import longrun.rules.regulator.ApplianceLinePressure;
import longrun.rules.regulator.LineRegulator;
import longrun.rules.regulator.PressureIndoors;
import longrun.rules.regulator.RegulatorCapacity;
import longrun.rules.regulator.RegulatorKinds;
import longrun.rules.regulator.RegulatorMinInlet;
import longrun.rules.regulator.RegulatorSetting;
import longrun.rules.regulator.RegulatorVents;
import longrun.rules.shape.House;
import longrun.rules.shape.NotSeen;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Rule;
import longrun.rules.shape.RuleState;
import longrun.rules.shape.Verdict;
import longrun.rules.shutoff.ServingShutoff;
import longrun.rules.shutoff.Shutoff;
import longrun.rules.surroundings.Surroundings;
import longrun.rules.tank.TankDistance;
import longrun.rules.trap.SedimentTrap;

/** Every rule there is, and the one way to ask them all. */
public final class Rules {

    private static final List<Rule> ALL = make();

    private static final Set<String> OF_HOOKUPS = Stream.of(Shutoff.rules(), SedimentTrap.rules(), Connector.rules())
            .flatMap(List::stream)
            .map(Rule::name)
            .collect(Collectors.toUnmodifiableSet());

    /** Parts of a plan in the order they are written. */
    private static final List<String> PARTS =
            List.of("code", "site", "regulators", "sections", "rooms", "appliances", "tank", "tanks", "use");

    private Rules() {}

    static {
        refuseStrangers(Thresholds.builtIn());
    }

    /**
     * A threshold under a name that no rule has would decide nothing, in silence.
     *
     * @throws IllegalStateException naming it
     */
    static void refuseStrangers(Thresholds thresholds) {
        Set<String> names = ALL.stream().map(Rule::name).collect(Collectors.toUnmodifiableSet());
        thresholds.listAll().stream()
                .map(Threshold::rule)
                .filter(name -> !names.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new IllegalStateException("a threshold names the rule " + name + ", and there is none");
                });
    }

    /** Every rule made anew, topic by topic. */
    static List<Rule> make() {
        return Stream.of(
                        List.<Rule>of(new EnteredCode()),
                        GasType.rules(),
                        Shutoff.rules(),
                        SedimentTrap.rules(),
                        Connector.rules(),
                        List.<Rule>of(
                                new RegulatorKinds(),
                                new RegulatorSetting(),
                                new RegulatorCapacity(),
                                new RegulatorMinInlet(),
                                new PressureIndoors(),
                                new ApplianceLinePressure()),
                        RegulatorVents.rules(),
                        LineRegulator.rules(),
                        TankDistance.rules(),
                        PipeRules.rules(),
                        Surroundings.rules(),
                        HotWater.rules())
                .flatMap(List::stream)
                .toList();
    }

    /** Every rule, in the order its topics are told. */
    public static List<Rule> all() {
        return ALL;
    }

    /** What all rules say of a house, with the answers given so far. */
    public static RuleReport check(House entered) {
        House house = entered.with(ServingShutoff.chosen(entered));
        List<Told> told = new ArrayList<>();
        List<RuleState> states = new ArrayList<>();
        NotSeen notSeen = new NotSeen(house.plan());
        for (Rule rule : ALL) {
            for (Verdict judged : rule.judge(house)) {
                Verdict verdict = notSeen.weighed(judged, OF_HOOKUPS.contains(rule.name()));
                states.add(verdict.state());
                verdict.field().ifPresent(f -> told.add(new Told(rule.precedence(), verdict, f)));
            }
        }
        List<Finding> findings = onceAnEntry(told).stream()
                .map(t -> Map.entry(order(t.verdict().state().pointer()), t.verdict()))
                .sorted(Map.Entry.comparingByKey())
                .flatMap(t -> t.getValue().finding().stream())
                .toList();
        return new RuleReport(Answers.apply(house.plan(), findings), states);
    }

    /** A verdict that tells something, and the entry that mends it. */
    private record Told(Precedence precedence, Verdict verdict, String field) {

        /** A question stands best where its entry is. */
        boolean isAtItsEntry() {
            return field.startsWith(verdict.state().pointer());
        }

        boolean asks() {
            return verdict.state().state() == State.ASKS;
        }
    }

    /** Of several questions that one entry answers, the first by precedence is asked. */
    private static List<Told> onceAnEntry(List<Told> told) {
        Comparator<Told> first =
                Comparator.comparing((Told t) -> !t.isAtItsEntry()).thenComparing(Told::precedence);
        Map<String, Told> asked = new HashMap<>();
        for (Told t : told) {
            if (t.asks()) {
                asked.merge(t.field(), t, (a, b) -> first.compare(b, a) < 0 ? b : a);
            }
        }
        Set<Told> kept = new HashSet<>(asked.values());
        return told.stream().filter(t -> !t.asks() || kept.contains(t)).toList();
    }

    /** Where a place stands in the plan: its part, then its number in the list. */
    private static long order(String pointer) {
        PlanPath at = PlanPath.of(pointer);
        int part = PARTS.indexOf(at.step(0));
        return (part < 0 ? PARTS.size() : part) * 10_000_000L + at.findIndex().orElse(0);
    }
}
