package longrun.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Words at a place.
 *
 * @param key the section they belong to; empty for none
 * @param lines from the top; each a row of words
 * @param at the middle of the first line, at its left end (or right end, or middle, by the anchor)
 * @param anchor start, middle or end
 * @param turned degrees clockwise
 * @param leader from the thing to the words; empty for none
 */
record Label(String key, List<List<Words>> lines, Point at, String anchor, double turned, List<Point> leader) {

    private static final double LINE = 19;

    /**
     * Words of one kind.
     *
     * @param pen tq quiet, ts heading, tb large, tm must fix, or empty
     */
    record Words(String text, String pen) {

        double size() {
            return pen.startsWith("tb") ? 20 : pen.startsWith("ts") || pen.startsWith("ti") ? 16 : 14;
        }

        /** A guess on the wide side: the face is the reader's own. */
        double width() {
            double em = pen.startsWith("tb") || pen.startsWith("ts") ? 0.6 : 0.54;
            double mark = pen.equals("tm") ? 16 : 0;
            return mark + text.codePointCount(0, text.length()) * size() * em;
        }
    }

    static double width(List<Words> line) {
        return line.stream().mapToDouble(Words::width).sum() + 8.0 * (line.size() - 1);
    }

    double width() {
        return lines.stream().mapToDouble(Label::width).max().orElse(0);
    }

    double lineY(int line) {
        return at.y() + line * LINE;
    }

    /** The room it takes, unless it is turned. */
    Box box() {
        double w = width();
        double left = anchor.equals("end") ? at.x() - w : anchor.equals("middle") ? at.x() - w / 2 : at.x();
        return new Box(left, at.y() - 11, left + w, at.y() + 9 + (lines.size() - 1) * LINE);
    }

    /** The middle line of turned words. */
    Optional<Stroke> along() {
        if (turned == 0) {
            return Optional.empty();
        }
        double half = width() / 2;
        double c = Math.cos(Math.toRadians(turned)) * half;
        double s = Math.sin(Math.toRadians(turned)) * half;
        return Optional.of(new Stroke(at.plus(-c, -s), at.plus(c, s)));
    }

    Box room() {
        return along().map(s -> s.box().grown(8)).orElseGet(this::box);
    }
}
