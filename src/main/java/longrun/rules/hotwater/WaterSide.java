package longrun.rules.hotwater;

import java.util.List;
import java.util.Optional;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Temperature;
import longrun.rules.shape.Place;

/** The hot water of a plan as its rules look at it. */
record WaterSide(Use.HotWater entry) {

    static final String AT = "/use/hotWater";
    static final Place PLACE = new Place("hot-water", AT, "the hot water");
    static final String STORAGE = "storage";
    static final String ON_DEMAND = "on-demand";
    private static final List<String> STOPS =
            List.of("three-way", "shutoff", "stop", "ball", "gate", "check", "mixing");

    static Optional<WaterSide> of(Plan plan) {
        return plan.use().flatMap(Use::hotWater).map(WaterSide::new);
    }

    /** Whether a storage heater is in the house and not said to be out for good. */
    boolean stores() {
        return entry.storage().isPresent() && !entry.arrangement().is(Arrangement.ON_DEMAND_ONLY);
    }

    /** Whether both heaters stand in a row. */
    boolean inSeries() {
        return entry.arrangement().is(Arrangement.SERIES)
                || !entry.arrangement().isKnown()
                        && entry.storage().isPresent()
                        && entry.onDemand().isPresent();
    }

    /** The last heater before the house. */
    String last() {
        return entry.onDemand().isPresent() && !entry.arrangement().is(Arrangement.STORAGE_ONLY) ? ON_DEMAND : STORAGE;
    }

    Fact<Temperature> storageSet() {
        return entry.storage().map(Use.Storage::setTemp).orElse(Fact.unknown());
    }

    Fact<Temperature> onDemandSet() {
        return entry.onDemand().map(Use.OnDemand::setTemp).orElse(Fact.unknown());
    }

    boolean valvesKnown() {
        return !entry.valves().isUnknown();
    }

    /** Whether the valves are entered, and of each what it is. */
    boolean allNamed() {
        return valvesKnown() && valves().stream().allMatch(v -> v.what().isKnown());
    }

    /** The valves entered; none where nobody has said. */
    List<Use.Valve> valves() {
        return entry.valves().findValue().orElse(List.of());
    }

    List<Use.Valve> valves(String what) {
        return valves().stream().filter(v -> v.what().is(what)).toList();
    }

    /** Whether a valve can shut the water off. */
    static boolean stops(Use.Valve valve) {
        return valve.what().is(STOPS::contains);
    }

    static String field(String entry) {
        return AT + "/" + entry;
    }
}
