package longrun.sizing;

import java.util.HashMap;
import java.util.Map;
import longrun.capacity.FittingLengths;
import longrun.capacity.Turn;
import longrun.plan.choice.Material;

/** Equivalent feet of fittings, looked up once a size. */
final class FittingFeet {

    private record Key(Turn turn, Material material, String size) {}

    private final Map<Key, Double> feet = new HashMap<>();

    double of(Turn turn, Material material, String size) {
        return feet.computeIfAbsent(
                new Key(turn, material, size),
                k -> FittingLengths.length(k.turn(), k.material(), k.size()).feet());
    }
}
