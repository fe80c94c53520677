package longrun.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Like parts counted together, each with where it is from. */
final class Tally {

    private record Key(String item, String size) {}

    private record Counted(String basis, Map<String, Integer> at, Set<String> where) {}

    private final PartGroup group;
    private final Map<Key, Counted> all = new LinkedHashMap<>();

    Tally(PartGroup group) {
        this.group = group;
    }

    /**
     * Counts parts.
     *
     * @param at where they are, as a person reads it
     * @param where the ids that are told for it
     * @param basis how the plan shows them, said once for all of a kind
     */
    void add(String item, String size, int count, String at, List<String> where, String basis) {
        if (count <= 0) {
            return;
        }
        Counted c = all.computeIfAbsent(
                new Key(item, size), k -> new Counted(basis, new LinkedHashMap<>(), new LinkedHashSet<>()));
        c.at().merge(at, count, Integer::sum);
        c.where().addAll(where);
    }

    List<PartLine> lines() {
        List<PartLine> out = new ArrayList<>();
        all.forEach((key, c) -> out.add(PartLine.pieces(
                group,
                key.item(),
                key.size(),
                c.at().values().stream().mapToInt(Integer::intValue).sum(),
                List.copyOf(c.where()),
                c.at().entrySet().stream()
                                .map(e -> e.getKey() + (e.getValue() == 1 ? "" : " " + e.getValue()))
                                .collect(Collectors.joining(", "))
                        + ": " + c.basis())));
        return out;
    }
}
