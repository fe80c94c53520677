package longrun.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

/** Finds for each label the place where it covers least. */
final class Labels {

    private static final double TURNED_HALF = 9;

    private final Ground ground;
    private final List<Label> placed = new ArrayList<>();

    Labels(Ground ground) {
        this.ground = ground;
    }

    List<Label> placed() {
        return placed;
    }

    /**
     * Takes the best of some places, the first being the best liked.
     *
     * @throws CancellationException where whoever asked for the drawing has given it up
     */
    void place(List<Label> places) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the drawing was given up");
        }
        Label best = places.get(0);
        double least = Double.MAX_VALUE;
        for (int i = 0; i < places.size(); i++) {
            double liked = i * (places.size() > 60 ? 0.006 : 0.06);
            if (liked >= least) {
                break;
            }
            double cost = cost(places.get(i), least - liked) + liked;
            if (cost < least) {
                least = cost;
                best = places.get(i);
            }
        }
        take(best);
    }

    private void take(Label label) {
        placed.add(label);
        label.along()
                .ifPresentOrElse(
                        s -> ground.add(Thing.of(-2, s)), () -> ground.add(Thing.of(-2, label.box(), label.at())));
        for (int k = 1; k < label.leader().size(); k++) {
            ground.add(Thing.of(
                    -2, new Stroke(label.leader().get(k - 1), label.leader().get(k))));
        }
    }

    /** What a place costs; looked at no further once it is more than the best so far. */
    private double cost(Label label, double least) {
        double sum = label.along().map(s -> turned(s, least)).orElseGet(() -> upright(label.box(), least));
        for (int k = 1; k < label.leader().size() && sum < least; k++) {
            sum += leader(new Stroke(label.leader().get(k - 1), label.leader().get(k)), k == 1);
        }
        return sum;
    }

    private double upright(Box box, double least) {
        double sum = 0;
        Box clear = box.grown(2);
        Box off = box.grown(3);
        Box near = box.grown(6);
        for (Thing t : ground.near(near)) {
            if (sum >= least) {
                return sum;
            }
            if (t.stroke().isEmpty()) {
                sum += t.box().overlaps(clear) ? 12 : 0;
            } else {
                sum += t.stroke().get().meets(t.run() == -2 ? near : off) ? 5 : 0;
            }
        }
        return sum;
    }

    private double turned(Stroke along, double least) {
        double sum = 0;
        for (Thing t : ground.near(along.box().grown(TURNED_HALF))) {
            if (sum >= least) {
                return sum;
            }
            if (t.stroke().isEmpty()) {
                sum += along.meets(t.box().grown(6)) ? 12 : 0;
            } else {
                sum += along.distance(t.stroke().get()) < TURNED_HALF ? 5 : 0;
            }
        }
        return sum;
    }

    private double leader(Stroke line, boolean first) {
        Stroke from = first ? new Stroke(line.a().towards(line.b(), 0.2), line.b()) : line;
        double sum = 0;
        for (Thing t : ground.near(from.box().grown(2))) {
            if (t.stroke().isEmpty()) {
                sum += from.meets(t.box()) ? 6 : 0;
            } else {
                sum += from.distance(t.stroke().get()) < 2 ? 2.5 : 0;
            }
        }
        return sum;
    }
}
