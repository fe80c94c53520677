package longrun.drawing.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longrun.drawing.svg.Box;

/** The sheet in squares, to find what lies near a place without looking at everything. */
final class Ground {

    private static final double SQUARE = 96;

    private final Map<Long, List<Entry>> squares = new HashMap<>();
    private int asked;

    /** A thing with the last question it was named in, so that none is named twice. */
    private static final class Entry {
        private final Thing thing;
        private int named;

        Entry(Thing thing) {
            this.thing = thing;
        }
    }

    void add(Thing thing) {
        Entry entry = new Entry(thing);
        for (long key : keys(thing.box())) {
            squares.computeIfAbsent(key, k -> new ArrayList<>(4)).add(entry);
        }
    }

    /** Everything whose room overlaps a box. */
    List<Thing> near(Box box) {
        List<Thing> out = new ArrayList<>();
        asked++;
        for (long key : keys(box)) {
            for (Entry e : squares.getOrDefault(key, List.of())) {
                if (e.named != asked && e.thing.box().overlaps(box)) {
                    e.named = asked;
                    out.add(e.thing);
                }
            }
        }
        return out;
    }

    double clash(Thing thing) {
        double sum = 0;
        for (Thing t : near(thing.box())) {
            sum += t.clash(thing);
        }
        return sum;
    }

    private static long[] keys(Box b) {
        int x0 = (int) Math.floor(b.left() / SQUARE);
        int x1 = (int) Math.floor(b.right() / SQUARE);
        int y0 = (int) Math.floor(b.top() / SQUARE);
        int y1 = (int) Math.floor(b.bottom() / SQUARE);
        long[] keys = new long[(x1 - x0 + 1) * (y1 - y0 + 1)];
        int n = 0;
        for (int x = x0; x <= x1; x++) {
            for (int y = y0; y <= y1; y++) {
                keys[n++] = x * 1_000_003L + y; // spreads over a hash table, as x and y side by side do not
            }
        }
        return keys;
    }
}
