package longrun.checked.working;

import java.util.Map;
import java.util.TreeMap;
import longrun.checked.published.PublishedCase;

/** Every kind of computation that answers published cases, by its name in {@code data/checked}. */
public final class Computations {

    private static final Map<String, Computation> ALL = new TreeMap<>();

    static {
        PipeComputations.addTo(ALL);
        AirComputations.addTo(ALL);
        TankComputations.addTo(ALL);
        WaterComputations.addTo(ALL);
        YearComputations.addTo(ALL);
    }

    private Computations() {}

    /**
     * The program's answer to a case.
     *
     * @throws IllegalStateException where the case names a computation that does not exist
     */
    public static Answer of(PublishedCase published) {
        Computation working = ALL.get(published.work());
        if (working == null) {
            throw new IllegalStateException(
                    "checked case " + published.id() + ": there is no computation named " + published.work());
        }
        return working.of(published.input());
    }
}
