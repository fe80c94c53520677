package longrun.drawing.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.piping.Outlet;
import longrun.plan.choice.Direction;

/** Finds a layout in which pipes and appliances keep clear of one another, as far as a bounded search goes. */
final class Placing {

    private static final double[] STRETCHES = {1, 1.6, 2.4, 3.4};
    private static final double MOST_STRETCH = 5;
    private static final double SEARCH = 3e6; // pairs, of which few are looked at; some 10 ms

    private final RouteModel model;
    private final Layout layout;
    private final Map<Integer, Laid> laid = new HashMap<>();

    Placing(RouteModel model, boolean apart) {
        this.model = model;
        this.layout = new Layout(model, apart);
    }

    /** Every section of the plan, its trees one below the other; the place of each tree's start beside it. */
    record Placed(Map<Integer, Laid> laid, List<Point> starts) {}

    Placed place() {
        List<Point> starts = new ArrayList<>();
        double below = 0;
        for (RouteModel.Tree tree : model.trees()) {
            spread(tree);
            improve(tree);
            Box box = startBox(tree);
            for (int r : tree.runs()) {
                for (Thing t : Layout.things(model.runs().get(r), at(r))) {
                    box = box.with(t.box());
                }
            }
            double dx = -box.left();
            double dy = below - box.top();
            tree.runs().forEach(r -> laid.put(r, at(r).moved(dx, dy)));
            starts.add(new Point(dx, dy));
            below += box.height() + 72;
        }
        return new Placed(laid, starts);
    }

    private Laid at(int run) {
        return java.util.Objects.requireNonNull(laid.get(run));
    }

    private static Box startBox(RouteModel.Tree tree) {
        Box box = Box.around(new Point(0, 0), 12, 16);
        return tree.atTank() ? box.with(TankSymbol.box(new Point(0, 0))) : box;
    }

    private Point node(Run run) {
        return run.above() < 0 ? new Point(0, 0) : at(run.above()).end();
    }

    private List<Thing> fixed(RouteModel.Tree tree) {
        Point origin = new Point(0, 0);
        List<Thing> out = new ArrayList<>(List.of(Thing.of(-1, Box.around(origin, 11, 14), origin)));
        if (tree.atTank()) {
            out.add(Thing.of(-1, TankSymbol.box(origin), origin));
        }
        return out;
    }

    /** Section by section from the start, each where it clashes least with those before it. */
    private void spread(RouteModel.Tree tree) {
        Ground ground = new Ground();
        fixed(tree).forEach(ground::add);
        for (int r : tree.runs()) {
            Run run = model.runs().get(r);
            Point node = node(run);
            double best = Double.MAX_VALUE;
            double bestStretch = 1;
            Direction bestHook = layout.hook[r];
            for (double s : STRETCHES) {
                for (Direction h : hooks(run)) {
                    java.util.Arrays.fill(layout.stretch[r], s);
                    layout.hook[r] = h;
                    double cost = cost(ground, run, layout.lay(run, node)) + s * 0.2;
                    if (cost < best) {
                        best = cost;
                        bestStretch = s;
                        bestHook = h;
                    }
                }
                if (best < s * 0.2 + 0.5) {
                    break;
                }
            }
            java.util.Arrays.fill(layout.stretch[r], bestStretch);
            layout.hook[r] = bestHook;
            laid.put(r, layout.lay(run, node));
            Layout.things(run, at(r)).forEach(ground::add);
        }
    }

    private double cost(Ground ground, Run run, Laid at) {
        double sum = 0;
        for (Thing t : Layout.things(run, at)) {
            sum += ground.clash(t);
        }
        return sum;
    }

    private List<Direction> hooks(Run run) {
        Direction last = layout.way[run.index()][layout.way[run.index()].length - 1];
        if (!run.isAt(Outlet.Kind.APPLIANCE)) {
            return List.of(layout.hook[run.index()]);
        }
        return Iso.LEVEL.stream().filter(d -> d != last.opposite()).toList();
    }

    private record Found(double cost, int one, int other) {}

    /** What all of a tree's things cost together, and the first two sections that clash beyond those left as they are. */
    private Found look(RouteModel.Tree tree, List<Thing> things, List<Long> left) {
        double sum = 0;
        int one = -1;
        int other = -1;
        int[] order = fromTheLeft(things);
        for (int i = 0; i < order.length; i++) {
            Thing first = things.get(order[i]);
            for (int k = i + 1; k < order.length; k++) {
                Thing second = things.get(order[k]);
                if (second.box().left() > first.box().right() + 1) {
                    break;
                }
                double clash = first.clash(second);
                if (clash > 0) {
                    sum += clash;
                    int later = Math.max(order[i], order[k]);
                    int earlier = Math.min(order[i], order[k]);
                    boolean sooner = one < 0 || later < one || later == one && earlier < other;
                    if (sooner
                            && !left.contains(pair(
                                    things.get(later).run(), things.get(earlier).run()))) {
                        one = later;
                        other = earlier;
                    }
                }
            }
        }
        one = one < 0 ? -1 : things.get(one).run();
        other = other < 0 ? -1 : things.get(other).run();
        for (int r : tree.runs()) {
            for (double s : layout.stretch[r]) {
                sum += s * 0.02;
            }
        }
        return new Found(sum, one, other);
    }

    /** The things by how far left their room begins, to the eighth of a pixel. */
    private static int[] fromTheLeft(List<Thing> things) {
        long[] keys = new long[things.size()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = (long) ((things.get(i).box().left() + 1e6) * 8) << 20 | i;
        }
        java.util.Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < keys.length; i++) {
            order[i] = (int) (keys[i] & 0xfffff);
        }
        return order;
    }

    private static long pair(int a, int b) {
        return ((long) a << 32) ^ (b & 0xffffffffL);
    }

    private List<Thing> all(RouteModel.Tree tree) {
        List<Thing> things = new ArrayList<>(fixed(tree));
        for (int r : tree.runs()) {
            Run run = model.runs().get(r);
            laid.put(r, layout.lay(run, node(run)));
            things.addAll(Layout.things(run, at(r)));
        }
        return things;
    }

    /** Stretches legs and turns hookups wherever that lessens what clashes. */
    private void improve(RouteModel.Tree tree) {
        List<Thing> things = all(tree);
        double pairs = Math.max(1, (double) things.size() * things.size() / 2);
        if (pairs > SEARCH / 4) {
            return;
        }
        long looks = (long) (SEARCH / pairs);
        List<Long> left = new ArrayList<>();
        Found now = look(tree, things, left);
        while (looks > 0 && (now.one() >= 0 || now.other() >= 0)) {
            Runnable best = () -> {};
            double least = now.cost() - 0.05;
            boolean better = false;
            for (Move move : moves(now)) {
                if (looks-- <= 0) {
                    break;
                }
                move.make().run();
                double cost = look(tree, all(tree), left).cost();
                move.back().run();
                if (cost < least) {
                    least = cost;
                    best = move.make();
                    better = true;
                }
            }
            if (better) {
                best.run();
            } else {
                left.add(pair(now.one(), now.other()));
            }
            now = look(tree, all(tree), left);
        }
        all(tree);
    }

    private record Move(Runnable make, Runnable back) {

        Move with(Move other) {
            return new Move(
                    () -> {
                        make.run();
                        other.make.run();
                    },
                    () -> {
                        other.back.run();
                        back.run();
                    });
        }
    }

    private List<Move> moves(Found clash) {
        List<Move> moves = new ArrayList<>();
        for (int run : new int[] {clash.one(), clash.other()}) {
            int r = run;
            for (int up = 0; r >= 0 && up < 5; up++) {
                stretches(r, moves);
                r = model.runs().get(r).above();
            }
        }
        List<Move> stretches = List.copyOf(moves);
        for (int run : new int[] {clash.one(), clash.other()}) {
            if (run >= 0) {
                List<Move> turns = new ArrayList<>();
                turns(run, turns);
                moves.addAll(turns);
                turns.forEach(t -> stretches.forEach(s -> moves.add(t.with(s))));
            }
        }
        return moves;
    }

    private void stretches(int r, List<Move> moves) {
        for (int k = 0; k < layout.stretch[r].length; k++) {
            double was = layout.stretch[r][k];
            int leg = k;
            for (double by : new double[] {1.4, 2}) {
                if (was * by <= MOST_STRETCH) {
                    moves.add(new Move(() -> layout.stretch[r][leg] = was * by, () -> layout.stretch[r][leg] = was));
                }
            }
        }
    }

    private void turns(int r, List<Move> moves) {
        Direction was = layout.hook[r];
        for (Direction h : hooks(model.runs().get(r))) {
            if (h != was) {
                moves.add(new Move(() -> layout.hook[r] = h, () -> layout.hook[r] = was));
            }
        }
    }
}
