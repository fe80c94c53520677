package longrun.rules.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import longrun.plan.choice.PartKind;

/**
 * The order of parts at an appliance that every code's text accepts: shutoff, sediment trap, union, connector (rule fact
 * ST-10). Rigid pipe and parts without a kind stay where they are.
 */
public final class RightOrder {

    private static final List<PartKind> ORDER = List.of(
            PartKind.SHUTOFF,
            PartKind.SEDIMENT_TRAP,
            PartKind.UNION,
            PartKind.FLEXIBLE_CONNECTOR,
            PartKind.BUILT_IN_TRAP);

    private RightOrder() {}

    /** The indices of the parts in the right order; a part already placed right keeps its place. */
    public static List<Integer> of(List<Optional<PartKind>> parts) {
        List<Integer> movable = IntStream.range(0, parts.size())
                .filter(i -> rank(parts, i) >= 0)
                .boxed()
                .toList();
        List<Integer> sorted = movable.stream()
                .sorted(Comparator.comparingInt(i -> rank(parts, i)))
                .toList();
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, parts.size()).boxed().toList());
        for (int i = 0; i < movable.size(); i++) {
            order.set(movable.get(i), sorted.get(i));
        }
        return List.copyOf(order);
    }

    /** Where a new part of this kind goes in a row of parts. */
    public static int placeFor(PartKind kind, List<Optional<PartKind>> parts) {
        int rank = ORDER.indexOf(kind == PartKind.RIGID_PIPE ? PartKind.UNION : kind);
        return IntStream.range(0, parts.size())
                .filter(i -> rank(parts, i) > rank)
                .findFirst()
                .orElse(parts.size());
    }

    private static int rank(List<Optional<PartKind>> parts, int i) {
        return parts.get(i).map(ORDER::indexOf).orElse(-1);
    }
}
