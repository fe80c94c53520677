package longrun.rules.pipe;

import java.util.List;
import longrun.piping.Piping;
import longrun.rules.shape.House;

/** Where a section goes on in the same kind of pipe, so that it has no end there. */
final class Continues {

    private Continues() {}

    /** How many ends of a plastic section are not joined to plastic: 0, 1 or 2. */
    static int endsOf(House house, String section) {
        Piping piping = house.pressures().sizing().piping();
        int at = piping.findSection(section).orElse(-1);
        if (at < 0) {
            return 2;
        }
        int before = piping.parent(at);
        List<Integer> after = piping.children(at);
        boolean start = before < 0 || !isPlastic(piping, before);
        boolean end = after.isEmpty() || !after.stream().allMatch(s -> isPlastic(piping, s));
        return (start ? 1 : 0) + (end ? 1 : 0);
    }

    private static boolean isPlastic(Piping piping, int section) {
        return piping.section(section).material().is(m -> m.isPlastic());
    }
}
