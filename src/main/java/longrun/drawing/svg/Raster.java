package longrun.drawing.svg;

import java.util.HashMap;
import java.util.Map;

/** Which small squares of the sheet are taken, so that a place is looked at in a few steps however full the sheet is. */
public final class Raster {

    /** Pixels; half of the narrowest gap between words and a pipe. */
    private static final double CELL = 2;

    /** Rows of 64 squares by block of 64 by 64. */
    private final Map<Long, long[]> blocks = new HashMap<>();

    private static int cell(double pixels) {
        return (int) Math.floor(pixels / CELL);
    }

    private static long key(int x, int y) {
        return x * 1_000_003L + y; // spreads over a hash table, as x and y side by side do not
    }

    /** The bits of a row's block between two squares, both included. */
    private static long mask(int block, int from, int to) {
        int low = Math.max(0, from - (block << 6));
        int high = Math.min(63, to - (block << 6));
        return (-1L << low) & (-1L >>> (63 - high));
    }

    public void take(Box b) {
        int x0 = cell(b.left());
        int x1 = cell(b.right());
        int y1 = cell(b.bottom());
        for (int bx = x0 >> 6; bx <= x1 >> 6; bx++) {
            long mask = mask(bx, x0, x1);
            for (int y = cell(b.top()); y <= y1; y++) {
                blocks.computeIfAbsent(key(bx, y >> 6), k -> new long[64])[y & 63] |= mask;
            }
        }
    }

    /** A line with some room on either side of it. */
    public void take(Stroke s, double room) {
        for (double off = -room; off <= room; off += CELL / 2) {
            Stroke beside = s.beside(off);
            int steps = steps(beside);
            for (int i = 0; i <= steps; i++) {
                Point p = beside.a().towards(beside.b(), (double) i / steps);
                int x = cell(p.x());
                int y = cell(p.y());
                blocks.computeIfAbsent(key(x >> 6, y >> 6), k -> new long[64])[y & 63] |= 1L << (x & 63);
            }
        }
    }

    public boolean isFree(Box b) {
        int x0 = cell(b.left());
        int x1 = cell(b.right());
        int y1 = cell(b.bottom());
        for (int bx = x0 >> 6; bx <= x1 >> 6; bx++) {
            long mask = mask(bx, x0, x1);
            long[] block = null;
            int at = Integer.MIN_VALUE;
            for (int y = cell(b.top()); y <= y1; y++) {
                if (y >> 6 != at) {
                    at = y >> 6;
                    block = blocks.get(key(bx, at));
                }
                if (block == null) {
                    y |= 63;
                } else if ((block[y & 63] & mask) != 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a line with some room on either side of it meets nothing. */
    public boolean isFree(Stroke s, double room) {
        for (double off = -room; off < room; off += CELL) {
            if (crossings(s.beside(off), 1) > 0) {
                return false;
            }
        }
        return crossings(s.beside(room), 1) == 0;
    }

    /** How often a line comes upon something, from its start on; counted no further than a number. */
    public int crossings(Stroke s, int most) {
        int steps = steps(s);
        double dx = (s.b().x() - s.a().x()) / steps;
        double dy = (s.b().y() - s.a().y()) / steps;
        int crossings = 0;
        boolean on = false;
        long[] block = null;
        long at = Long.MIN_VALUE;
        for (int i = 0; i <= steps && crossings < most; i++) {
            int x = cell(s.a().x() + i * dx);
            int y = cell(s.a().y() + i * dy);
            long key = key(x >> 6, y >> 6);
            if (key != at) {
                at = key;
                block = blocks.get(key);
            }
            boolean taken = block != null && (block[y & 63] >>> (x & 63) & 1) != 0;
            crossings += taken && !on ? 1 : 0;
            on = taken;
        }
        return crossings;
    }

    private static int steps(Stroke s) {
        return Math.max(1, (int) Math.ceil(s.a().distance(s.b()) / CELL));
    }
}
