package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Raster;
import longrun.drawing.svg.Stroke;

/** Finds for each label the place where it covers least, and, where there is room for all, one where it covers nothing. */
final class Labels {

    private static final double TURNED_HALF = 9;
    private static final double PIPE_HALF = 1.5;

    /** What a place costs that no label should take. */
    private static final double CLASH = 5;

    /** What it costs a leader to cross a pipe: whose it is, is then harder to see. */
    private static final double PIPE = 4;

    private final Raster words = new Raster();
    private final Raster symbols = new Raster();
    private final Raster pipes = new Raster();
    private final Raster thin = new Raster();
    private final List<Label> placed = new ArrayList<>();
    private boolean shutIn;

    List<Label> placed() {
        return placed;
    }

    /** Whether words were found for which no place covers nothing. */
    boolean isShutIn() {
        return shutIn;
    }

    /** Something that is drawn before the words: a pipe's stroke, or the room of a symbol. */
    void keepOff(Thing thing) {
        thing.stroke().ifPresentOrElse(s -> pipes.take(s, PIPE_HALF), () -> symbols.take(thing.box()));
    }

    /** A thin line that words should keep off. */
    void keepOff(Stroke line) {
        thin.take(line, 0.5);
    }

    /** Whether nothing drawn or written lies in a box. */
    boolean isFree(Box box) {
        return words.isFree(box) && symbols.isFree(box) && pipes.isFree(box) && thin.isFree(box);
    }

    /**
     * Takes the best of some places, the first being the best liked.
     *
     * @throws CancellationException where whoever asked for the drawing has given it up
     */
    void place(List<Label> places) {
        place(places, Optional::empty);
    }

    /**
     * The same; where each of them covers something, the way out.
     *
     * @param out finds a place that covers nothing; not asked for where it is not needed
     */
    void place(List<Label> places, Supplier<Optional<Label>> out) {
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
        if (least >= CLASH && clashes(best)) {
            Optional<Label> free = out.get();
            shutIn |= free.isEmpty();
            best = free.orElse(best);
        }
        take(best);
    }

    private void take(Label label) {
        placed.add(label);
        label.along().ifPresentOrElse(s -> words.take(s, TURNED_HALF - 1), () -> words.take(label.box()));
        for (Stroke s : label.leaders()) {
            thin.take(s, 0.5);
        }
    }

    /** What a place costs; looked at no further once it is more than the best so far. */
    private double cost(Label label, double least) {
        double sum = box(label);
        for (Stroke s : label.leaders()) {
            if (sum >= least) {
                return sum;
            }
            sum += leader(clear(s, label), least - sum);
        }
        return sum;
    }

    /** Whether it stands on something, or its leader passes through words or symbols. */
    private boolean clashes(Label label) {
        return box(label) >= CLASH
                || label.leaders().stream()
                        .map(s -> clear(s, label))
                        .anyMatch(s -> words.crossings(s, 1) > 0 || ofSection(label) && symbols.crossings(s, 1) > 0);
    }

    /** What belongs to no section is a tank or a regulator, and stands among the symbols of its pipe. */
    private static boolean ofSection(Label label) {
        return !label.key().isEmpty();
    }

    /** Whether words stand on nothing where they are. */
    boolean standsClear(Label label) {
        return box(label) < CLASH;
    }

    /** Whether a leader may go straight along a line. */
    boolean isOpen(Stroke line) {
        return words.isFree(line, 2) && symbols.isFree(line, 1);
    }

    /** How many pipes a leader comes upon along a line. */
    int pipesMet(Stroke line) {
        return pipes.crossings(line, 9);
    }

    /** What it costs a leader to pass a point, a step being ten; negative where it may not. */
    int leaderCost(Point p) {
        Box about = Box.around(p, 4, 4);
        if (!words.isFree(about)) {
            return -1;
        }
        return (symbols.isFree(about) ? 0 : 200) + (pipes.isFree(about) ? 0 : 24) + (thin.isFree(about) ? 0 : 20);
    }

    private double box(Label label) {
        return label.along().map(this::turned).orElseGet(() -> upright(label.box()));
    }

    /** A leader's stroke without its beginning, which touches what it belongs to. */
    private static Stroke clear(Stroke line, Label label) {
        if (!line.a().equals(label.leader().get(0))) {
            return line;
        }
        double length = line.a().distance(line.b());
        return new Stroke(line.a().towards(line.b(), Math.min(0.5, 5 / Math.max(1, length))), line.b());
    }

    private double upright(Box box) {
        if (!words.isFree(box.grown(2)) || !symbols.isFree(box.grown(2))) {
            return 24;
        }
        if (!pipes.isFree(box.grown(2))) {
            return 12;
        }
        return thin.isFree(box.grown(4)) ? 0 : CLASH;
    }

    private double turned(Stroke along) {
        if (!words.isFree(along, TURNED_HALF) || !symbols.isFree(along, TURNED_HALF)) {
            return 24;
        }
        if (!pipes.isFree(along, TURNED_HALF - 1)) {
            return 12;
        }
        return thin.isFree(along, TURNED_HALF - 1) ? 0 : CLASH;
    }

    private double leader(Stroke from, double least) {
        double sum = 6.0 * words.crossings(from, 2) + 6.0 * symbols.crossings(from, 2);
        if (sum < least) {
            sum += PIPE * pipes.crossings(from, (int) Math.ceil((least - sum) / PIPE));
        }
        return sum < least ? sum + 2.5 * thin.crossings(from, 4) : sum;
    }
}
