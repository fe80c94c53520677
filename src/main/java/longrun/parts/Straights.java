package longrun.parts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.piping.Stage;
import longrun.plan.Leg;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Material;

/** The straights of threaded pipe by kind and size: legs that go on the same way without a fitting are one. */
final class Straights {

    private final Bought bought;
    private final Map<String, List<Straight>> byKey = new LinkedHashMap<>();
    private final Map<Integer, End> ends = new HashMap<>();

    /** How a section ends: its last straight, by its place among those of its key, and which way it goes. */
    private record End(int index, Optional<Direction> way) {}

    private Straights(Bought bought) {
        this.bought = bought;
    }

    static Map<String, List<Straight>> of(Bought bought) {
        Straights all = new Straights(bought);
        for (Stage stage : bought.piping().stages()) {
            stage.sections().forEach(all::section);
        }
        return all.byKey;
    }

    private void section(int s) {
        if (bought.isInPlace(s)
                || bought.material(s).filter(m -> m == Material.STEEL).isEmpty()
                || bought.size(s).isEmpty()) {
            return;
        }
        List<Straight> list = byKey.computeIfAbsent(bought.key(s), k -> new ArrayList<>());
        End end = goingOn(s);
        for (Leg leg : bought.piping().section(s).legs().findValue().orElse(List.of())) {
            long length = Math.round(leg.length().feet() * 1000);
            if (length <= 0) {
                continue;
            }
            if (end.index() >= 0 && end.way().isPresent() && end.way().equals(leg.direction())) {
                list.set(end.index(), list.get(end.index()).longer(length, bought.id(s)));
            } else {
                list.add(new Straight(length, bought.id(s), leg.direction().isPresent()));
                end = new End(list.size() - 1, leg.direction());
            }
        }
        ends.put(s, end);
    }

    /** Where the section before ends, if this one goes on in the same pipe. */
    private End goingOn(int s) {
        int before = bought.piping().parent(s);
        boolean same = before >= 0
                && bought.piping().children(before).size() == 1
                && bought.key(before).equals(bought.key(s));
        End none = new End(-1, Optional.empty());
        return same ? ends.getOrDefault(before, none) : none;
    }
}
