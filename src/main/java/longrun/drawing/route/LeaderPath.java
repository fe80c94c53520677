package longrun.drawing.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;

/**
 * Finds the nearest place for words that can be led to without passing through other words: from their pipe outward in
 * small steps, about what stands in the way.
 */
final class LeaderPath {

    private static final double STEP = 8;

    private static final double MIDDLE = 0.25;

    /** How far beyond the drawing a place is looked for, pixels. */
    private static final double BEYOND = 260;

    private static final int[][] WAYS = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 1}, {-1, 1}, {-1, -1}, {1, -1}};

    private final Labels labels;
    private final Box limit;
    private final int across;
    private final int[] cost;
    private final int[] from;
    private final PriorityQueue<long[]> next = new PriorityQueue<>((a, b) -> Long.compare(a[0], b[0]));

    private LeaderPath(Labels labels, Box extent) {
        this.labels = labels;
        this.limit = extent.grown(BEYOND);
        this.across = (int) Math.ceil(limit.width() / STEP) + 1;
        int down = (int) Math.ceil(limit.height() / STEP) + 1;
        this.cost = new int[across * down];
        this.from = new int[across * down];
        Arrays.fill(cost, Integer.MAX_VALUE);
    }

    /**
     * The place with its leader; empty where their pipe is shut in on every side.
     *
     * @param strokes the leader may begin anywhere on them
     * @param extent what is drawn
     */
    static Optional<Label> find(Labels labels, Label.Text text, List<Stroke> strokes, Box extent) {
        return new LeaderPath(labels, extent).search(text, strokes);
    }

    private Point at(int square) {
        return new Point(limit.left() + square % across * STEP, limit.top() + (square / across) * STEP);
    }

    private int square(Point p) {
        return (int) Math.round((p.y() - limit.top()) / STEP) * across
                + (int) Math.round((p.x() - limit.left()) / STEP);
    }

    private Optional<Label> search(Label.Text text, List<Stroke> strokes) {
        double width = Label.widest(text.lines());
        begin(strokes, MIDDLE, true);
        if (next.isEmpty()) {
            begin(strokes, 0, true);
        }
        if (next.isEmpty()) {
            begin(strokes, 0, false);
        }
        while (!next.isEmpty()) {
            long[] nearest = next.poll();
            int square = (int) nearest[1];
            if (nearest[0] > cost[square]) {
                continue;
            }
            Optional<Label> found = standing(text, width, square, strokes);
            if (found.isPresent()) {
                return found;
            }
            for (int[] way : WAYS) {
                int column = square % across + way[0];
                int to = square + way[1] * across + way[0];
                if (column >= 0 && column < across && to >= 0 && to < cost.length) {
                    int steps = way[0] != 0 && way[1] != 0 ? 14 : 10;
                    if (cost[square] + steps < cost[to]) {
                        int more = labels.leaderCost(at(to));
                        if (more >= 0) {
                            reach(to, square, cost[square] + steps + more);
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * @param off from either end of a leg, as a share of it: a leader that ends in a tee may be any of its pipes'
     * @param open whether only from where nothing is written beside the pipe
     */
    private void begin(List<Stroke> strokes, double off, boolean open) {
        for (Stroke s : strokes) {
            int steps = Math.max(2, (int) (s.a().distance(s.b()) / STEP));
            for (int i = Math.max(1, (int) Math.ceil(off * steps)); i <= Math.min(steps - 1, (1 - off) * steps); i++) {
                int square = square(s.a().towards(s.b(), (double) i / steps));
                Point p = at(square);
                if (!open || labels.leaderCost(p) >= 0 && labels.isOpen(new Stroke(onPipe(p, strokes), p))) {
                    reach(square, square, 0);
                }
            }
        }
    }

    private void reach(int square, int before, int costs) {
        if (costs < cost[square]) {
            cost[square] = costs;
            from[square] = before;
            next.add(new long[] {costs, square});
        }
    }

    private Optional<Label> standing(Label.Text text, double width, int square, List<Stroke> strokes) {
        Point foot = at(square);
        for (int side : new int[] {1, -1}) {
            Label there = new Label(
                    text.key(),
                    text.lines(),
                    foot.plus(5.0 * side, 0),
                    side > 0 ? "start" : "end",
                    0,
                    List.of(foot, foot),
                    width);
            if (labels.standsClear(there)) {
                return Optional.of(
                        new Label(text.key(), text.lines(), there.at(), there.anchor(), 0, leader(square, strokes)));
            }
        }
        return Optional.empty();
    }

    /** The way back to the pipe, straightened as far as nothing stands between. */
    private List<Point> leader(int square, List<Stroke> strokes) {
        List<Point> way = new ArrayList<>();
        for (int s = square; ; s = from[s]) {
            way.add(at(s));
            if (from[s] == s) {
                break;
            }
        }
        way.add(onPipe(way.get(way.size() - 1), strokes));
        Collections.reverse(way);
        List<Point> straight = new ArrayList<>(List.of(way.get(0)));
        int at = 0;
        while (at < way.size() - 1) {
            int to = way.size() - 1;
            while (to > at + 1 && !isStraight(way, at, to)) {
                to--;
            }
            straight.add(way.get(to));
            at = to;
        }
        return straight;
    }

    /** Whether straight on nothing stands in the way, and no more pipes are crossed than on the way found. */
    private boolean isStraight(List<Point> way, int at, int to) {
        Stroke line = new Stroke(way.get(at), way.get(to));
        if (!labels.isOpen(line)) {
            return false;
        }
        int crossed = 0;
        for (int k = at; k < to; k++) {
            crossed += labels.pipesMet(new Stroke(way.get(k), way.get(k + 1)));
        }
        return labels.pipesMet(line) <= crossed;
    }

    private static Point onPipe(Point p, List<Stroke> strokes) {
        Point best = strokes.get(0).a();
        for (Stroke s : strokes) {
            Point q = s.nearest(p);
            if (q.distance(p) < best.distance(p)) {
                best = q;
            }
        }
        return best;
    }
}
