package longrun.drawing.route;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.piping.Outlet;
import longrun.plan.choice.Direction;

/**
 * Lays the sections out. Directions are true; how long a leg is drawn is free, and is used to keep pipes apart. A leg
 * whose direction is not said is drawn on a way that is free.
 */
final class Layout {

    private static final double HEADER = 60;
    static final double APPLIANCE_HALF = 11;

    /** From one branch of a pipe to the next, at least, pixels: what is written at the sections between stands there. */
    private static final double BETWEEN_BRANCHES = 140;

    private final RouteModel model;
    final double[][] stretch;
    final Direction[][] way;
    final Direction[] hook;
    private final int[] header;
    private final Direction[] headerWay;
    private final double[] room;

    /** @param apart whether branches of a pipe are drawn further apart than their legs ask for */
    Layout(RouteModel model, boolean apart) {
        this.model = model;
        int n = model.runs().size();
        stretch = new double[n][];
        way = new Direction[n][];
        hook = new Direction[n];
        header = new int[n];
        headerWay = new Direction[n];
        for (Run run : model.runs()) {
            stretch[run.index()] = new double[run.legs().size()];
            java.util.Arrays.fill(stretch[run.index()], 1);
        }
        room = new double[n];
        java.util.Arrays.fill(room, 1);
        if (apart) {
            partBranches();
        }
        for (RouteModel.Tree tree : model.trees()) {
            Map<Integer, EnumMap<Direction, Integer>> said = new HashMap<>();
            for (int r : tree.runs()) {
                said(model.runs().get(r), said);
            }
            Map<Integer, EnumMap<Direction, Integer>> used = new HashMap<>();
            for (int r : tree.runs()) {
                direct(model.runs().get(r), used, said);
            }
        }
    }

    /** By how much each section is drawn longer so that what leaves the pipe before and after it stands apart. */
    private void partBranches() {
        List<Run> runs = model.runs();
        int[] leaving = new int[runs.size()];
        runs.stream().filter(r -> r.above() >= 0).forEach(r -> leaving[r.above()]++);
        for (Run run : runs) {
            if (leaving[run.index()] < 2) {
                continue;
            }
            List<Run> between = new ArrayList<>(List.of(run));
            int above = run.above();
            while (above >= 0 && leaving[above] == 1) {
                between.add(runs.get(above));
                above = runs.get(above).above();
            }
            double drawn = between.stream()
                    .flatMap(r -> r.legs().stream())
                    .mapToDouble(this::drawn)
                    .sum();
            if (above >= 0) {
                between.forEach(r -> room[r.index()] = Math.max(1, BETWEEN_BRANCHES / drawn));
            }
        }
    }

    private static void said(Run run, Map<Integer, EnumMap<Direction, Integer>> saidAt) {
        run.legs()
                .get(0)
                .way()
                .ifPresent(d -> saidAt.computeIfAbsent(run.above(), k -> new EnumMap<>(Direction.class))
                        .merge(d, 1, Integer::sum));
    }

    private void direct(
            Run run,
            Map<Integer, EnumMap<Direction, Integer>> usedAt,
            Map<Integer, EnumMap<Direction, Integer>> saidAt) {
        int i = run.index();
        EnumMap<Direction, Integer> used = usedAt.computeIfAbsent(run.above(), k -> new EnumMap<>(Direction.class));
        EnumMap<Direction, Integer> said = saidAt.getOrDefault(run.above(), new EnumMap<>(Direction.class));
        Optional<Direction> arriving =
                run.above() < 0 ? Optional.empty() : Optional.of(way[run.above()][way[run.above()].length - 1]);
        if (used.isEmpty()) {
            arriving.ifPresent(d -> used.put(d.opposite(), 1));
        }
        way[i] = new Direction[run.legs().size()];
        for (int k = 0; k < way[i].length; k++) {
            Optional<Direction> before = k > 0 ? Optional.of(way[i][k - 1]) : arriving;
            EnumMap<Direction, Integer> taken = new EnumMap<>(Direction.class);
            if (k == 0) {
                taken.putAll(used);
                taken.putAll(said);
                said.forEach((d, count) -> {
                    if (count > 1) {
                        taken.put(headerWay(d, used, said), 1);
                    }
                });
            }
            way[i][k] = run.legs().get(k).way().orElseGet(() -> free(before, taken));
        }
        headerWay[i] = headerWay(way[i][0], used, said);
        header[i] = used.merge(way[i][0], 1, Integer::sum) - 1;
        Direction last = way[i][way[i].length - 1];
        hook[i] = Iso.isLevel(last) ? last : Direction.EAST;
    }

    /** Which way a header goes off which sections leave side by side: across them, where nothing else goes. */
    private static Direction headerWay(Direction d, Map<Direction, Integer> used, Map<Direction, Integer> said) {
        Direction across = Iso.across(d);
        boolean taken = used.containsKey(across) || said.containsKey(across);
        boolean other = used.containsKey(across.opposite()) || said.containsKey(across.opposite());
        return taken && !other ? across.opposite() : across;
    }

    private static Direction free(Optional<Direction> before, Map<Direction, Integer> used) {
        Direction straight = before.filter(Iso::isLevel).orElse(Direction.EAST);
        List<Direction> tries = List.of(
                straight,
                Iso.across(straight),
                Iso.across(straight).opposite(),
                straight.opposite(),
                Direction.DOWN,
                Direction.UP);
        for (Direction d : tries) {
            if (!used.containsKey(d) && before.filter(b -> b == d.opposite()).isEmpty()) {
                return d;
            }
        }
        return straight;
    }

    /** How long a leg is drawn before it is stretched: longer for longer ones, but never to scale. */
    private double drawn(Run.Leg leg) {
        double small = model.runs().size() > 14 ? 0.75 : 0.85;
        return small * Math.max(52, Math.min(150, 38 + 16 * Math.sqrt(leg.known() ? leg.feet() : 9)));
    }

    /** Lays one section out from where it leaves. */
    Laid lay(Run run, Point node) {
        int i = run.index();
        List<Point> corners = new ArrayList<>();
        Point at = node.along(Iso.of(headerWay[i]), header[i] * HEADER);
        corners.add(at);
        for (int k = 0; k < way[i].length; k++) {
            at = at.along(Iso.of(way[i][k]), drawn(run.legs().get(k)) * room[i] * stretch[i][k]);
            corners.add(at);
        }
        boolean feeds = run.isAt(Outlet.Kind.APPLIANCE);
        Point hookEnd = feeds ? at.along(Iso.of(hook[i]), Hookup.length(run.parts())) : at;
        Point centre = hookEnd.along(Iso.of(hook[i]), APPLIANCE_HALF).plus(0, 8 - run.endHeight() / 2);
        return new Laid(node, corners, List.of(way[i]), hookEnd, hook[i], centre);
    }

    /** The room a section takes with what hangs on it. */
    static List<Thing> things(Run run, Laid laid) {
        List<Thing> out = new ArrayList<>();
        for (Stroke s : laid.legs()) {
            out.add(Thing.of(run.index(), s));
        }
        if (run.isAt(Outlet.Kind.APPLIANCE)) {
            out.add(Thing.of(run.index(), new Stroke(laid.end(), laid.hookEnd())));
            out.add(Thing.of(run.index(), applianceBox(run, laid), laid.hookEnd()));
        } else if (run.isAt(Outlet.Kind.REGULATOR)) {
            out.add(Thing.of(-1, Box.around(laid.end(), 11, 14), laid.end()));
        }
        return out;
    }

    static Box applianceBox(Run run, Laid laid) {
        double half = 2 * APPLIANCE_HALF;
        return Box.around(laid.appliance(), half * 0.87, run.endHeight() / 2 + half / 2);
    }
}
