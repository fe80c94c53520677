package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;

/**
 * Words at a place.
 *
 * @param key the section they belong to; empty for none
 * @param lines from the top; each a row of words
 * @param at the middle of the first line, at its left end (or right end, or middle, by the anchor)
 * @param anchor start, middle or end
 * @param turned degrees clockwise
 * @param leader from the thing to the words; empty for none
 * @param width of the longest line
 */
record Label(
        String key, List<List<Words>> lines, Point at, String anchor, double turned, List<Point> leader, double width) {

    private static final double LINE = 19;

    Label(String key, List<List<Words>> lines, Point at, String anchor, double turned, List<Point> leader) {
        this(key, lines, at, anchor, turned, leader, widest(lines));
    }

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
            double bold = pen.startsWith("tb") || pen.startsWith("ts") || pen.equals("tm") ? 1.1 : 1;
            double mark = pen.equals("tm") ? 16 : 0;
            double ems = 0;
            for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
                ems += em(text.codePointAt(i));
            }
            return mark + ems * size() * bold;
        }

        /** A letter's width as a share of the letters' size, no less than in the faces a page or a sheet may use. */
        private static double em(int letter) {
            if (letter >= 0x2E80) {
                return 1.1;
            }
            if ("WMm@%".indexOf(letter) >= 0) {
                return 0.95;
            }
            if (Character.isUpperCase(letter) || letter == 'w' || letter == '\u2026' || letter > 0x24F) {
                return 0.76;
            }
            return "iljtfr.,:;'| /()".indexOf(letter) >= 0 ? 0.4 : 0.59;
        }
    }

    /**
     * Words that still look for a place.
     *
     * @param key the section they belong to; empty for none
     */
    record Text(String key, List<List<Words>> lines) {

        static Text quiet(String key, List<String> lines) {
            return new Text(
                    key, lines.stream().map(l -> List.of(new Words(l, "tq"))).toList());
        }
    }

    /** The leader's strokes, from the thing on. */
    List<Stroke> leaders() {
        List<Stroke> out = new ArrayList<>();
        for (int k = 1; k < leader.size(); k++) {
            out.add(new Stroke(leader.get(k - 1), leader.get(k)));
        }
        return out;
    }

    static double width(List<Words> line) {
        return line.stream().mapToDouble(Words::width).sum() + 8.0 * (line.size() - 1);
    }

    static double widest(List<List<Words>> lines) {
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
