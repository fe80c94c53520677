package longrun.plan.json;

import java.util.List;
import java.util.Map;
import longrun.plan.Plan;

/**
 * Where a document has what a plan's records hold. Where a list is allowed a person may write one thing without it, and
 * the one tank stands in a list or not, under either of its two names; what can't be read keeps its place in a list. A
 * pointer must name what was written.
 */
public final class AsWritten {

    /** Every list stands as a list, and the tank as {@code tank}. */
    public static final AsWritten IN_FULL = new AsWritten(Map.of(), "/tank");

    /** In a list's places: one thing that stands without the list. */
    static final int ALONE = -1;

    private final Map<String, List<Integer>> places;
    private final String tank;

    private AsWritten(Map<String, List<Integer>> places, String tank) {
        this.places = Map.copyOf(places);
        this.tank = tank;
    }

    /**
     * How a document writes the plan that was read from it.
     *
     * @param places by a list's pointer as written, where each item that was read stands in it; only of the lists where
     *     that is not its own number
     */
    static AsWritten of(Plan plan, Map<String, List<Integer>> places) {
        String tank = !plan.tank().isEmpty() ? "/tank/0" : plan.tanks().isEmpty() ? "/tank" : "/tanks/0";
        return new AsWritten(places, tank);
    }

    /**
     * The pointer of what the document holds.
     *
     * @param inFull the pointer of the same place with every list written as a list; the one tank may be {@code /tank}
     */
    public String pointer(String inFull) {
        String full = inFull;
        if (full.equals("/tank") || full.startsWith("/tank/") && !full.matches("/tank/\\d+(/.*)?")) {
            full = tank + full.substring("/tank".length());
        }
        if (places.isEmpty()) {
            return full;
        }
        StringBuilder out = new StringBuilder();
        List<Integer> items = List.of();
        for (int from = 0; from < full.length(); ) {
            int slash = full.indexOf('/', from + 1);
            int end = slash < 0 ? full.length() : slash;
            int item = index(full.substring(from + 1, end));
            boolean moved = item >= 0 && item < items.size();
            if (!moved) {
                out.append(full, from, end);
            } else if (items.get(item) != ALONE) {
                out.append('/').append(items.get(item));
            }
            items = moved && items.get(item) == ALONE ? List.of() : places.getOrDefault(out.toString(), List.of());
            from = end;
        }
        return out.toString();
    }

    private static int index(String token) {
        boolean number = !token.isEmpty() && token.length() < 7 && token.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? Integer.parseInt(token) : -1;
    }

    /** Whether every item of a list could be read. */
    boolean isWhole(String list) {
        List<Integer> items = places.get(pointer(list));
        return items == null || items.equals(List.of(ALONE));
    }
}
