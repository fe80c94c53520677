package longrun.rules.shutoff;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import longrun.plan.choice.PartKind;
import longrun.rules.limit.State;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Rule;
import longrun.rules.trap.SedimentTrap;

/**
 * Where several shutoffs are fitted at an appliance, one of them must meet all the rules: the one that fails least is
 * looked at, the nearest of equals. Then two valves that each lack something are no pass, and a second valve beside a
 * right one is no fault.
 */
public final class ServingShutoff {

    /** No hookup has so many; of more the nearest are looked at, which can only find more to mend. */
    private static final int LOOKED_AT = 12;

    private static final List<Rule> OF_THE_SHUTOFF = Stream.concat(
                    Shutoff.rules().stream().filter(r -> !r.name().equals("shutoff-main")),
                    SedimentTrap.rules().stream().filter(r -> r.name().equals("trap-downstream-of-shutoff")))
            .toList();

    /** A hookup seen with one of its shutoffs, and how many rules that one breaks or leaves open. */
    private record Seen(Hookup hookup, long broken, long asks) {

        static Seen of(House house, Hookup hookup) {
            House seen = house.with(List.of(hookup));
            List<State> states = OF_THE_SHUTOFF.stream()
                    .flatMap(r -> r.judge(seen).stream())
                    .map(v -> v.state().state())
                    .toList();
            return new Seen(hookup, count(states, State.BROKEN), count(states, State.ASKS));
        }

        private static long count(List<State> states, State state) {
            return states.stream().filter(s -> s == state).count();
        }
    }

    private ServingShutoff() {}

    /** The hookups of a house, each with the shutoff that serves. */
    public static List<Hookup> chosen(House house) {
        return house.hookups().stream().map(h -> chosen(house, h)).toList();
    }

    private static Hookup chosen(House house, Hookup hookup) {
        List<Hookup.Fitted> valves = hookup.listOf(PartKind.SHUTOFF);
        if (valves.size() < 2) {
            return hookup;
        }
        return valves.stream()
                .sorted(Hookup.NEAREST)
                .limit(LOOKED_AT)
                .map(v -> Seen.of(house, hookup.servedBy(v)))
                .min(Comparator.comparingLong(Seen::broken).thenComparingLong(Seen::asks))
                .map(Seen::hookup)
                .orElse(hookup);
    }
}
