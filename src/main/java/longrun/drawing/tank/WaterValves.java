package longrun.drawing.tank;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.plan.choice.Arrangement;

/**
 * The position of the water-side valves in an arrangement: 1 and 2 before and behind the storage heater, 3 round it, 4 and 5
 * before and behind the on-demand heater, 6 round it, 7 cold water to the mixing valve, which is never closed. No position
 * leads hot water round the mixing valve or shuts a relief valve off.
 */
public final class WaterValves {

    /** How many there are. */
    static final int COUNT = 7;

    private WaterValves() {}

    /** Whether a valve is open. */
    public static boolean isOpen(Arrangement a, int valve) {
        return switch (a) {
            case SERIES -> List.of(1, 2, 4, 5, 7).contains(valve);
            case ON_DEMAND_ONLY -> List.of(3, 4, 5, 7).contains(valve);
            case STORAGE_ONLY -> List.of(1, 2, 6, 7).contains(valve);
        };
    }

    /** "open 1 2 4 5; closed 3 6". */
    public static String words(Arrangement a) {
        return "open " + numbers(a, true) + "; closed " + numbers(a, false);
    }

    private static String numbers(Arrangement a, boolean open) {
        return IntStream.range(1, COUNT)
                .filter(v -> isOpen(a, v) == open)
                .mapToObj(String::valueOf)
                .collect(Collectors.joining(" "));
    }
}
