package longrun.drawing.svg;

/** A straight line on the sheet. */
public record Stroke(Point a, Point b) {

    public Box box() {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    /** The same line, this far to its right. */
    Stroke beside(double off) {
        Point u = a.unit(b);
        return new Stroke(a.plus(-u.y() * off, u.x() * off), b.plus(-u.y() * off, u.x() * off));
    }

    public boolean sharesEnd(Stroke o) {
        return same(a, o.a) || same(a, o.b) || same(b, o.a) || same(b, o.b);
    }

    public boolean endsAt(Point p) {
        return same(a, p) || same(b, p);
    }

    private static boolean same(Point p, Point q) {
        return Math.abs(p.x() - q.x()) < 0.01 && Math.abs(p.y() - q.y()) < 0.01;
    }

    /** The least distance between two lines, pixels; zero where they cross. */
    public double distance(Stroke o) {
        if (crosses(o)) {
            return 0;
        }
        return Math.min(Math.min(distance(o.a), distance(o.b)), Math.min(o.distance(a), o.distance(b)));
    }

    private double distance(Point p) {
        return p.distance(nearest(p));
    }

    /** The point of it that is nearest to another. */
    public Point nearest(Point p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
        return a.towards(b, Math.max(0, Math.min(1, t)));
    }

    private boolean crosses(Stroke o) {
        return turn(a, b, o.a) * turn(a, b, o.b) < 0 && turn(o.a, o.b, a) * turn(o.a, o.b, b) < 0;
    }

    private static double turn(Point p, Point q, Point r) {
        return Math.signum((q.x() - p.x()) * (r.y() - p.y()) - (q.y() - p.y()) * (r.x() - p.x()));
    }

    /** Whether any of it lies in a rectangle. */
    public boolean meets(Box box) {
        double from = 0;
        double to = 1;
        double[] p = {a.x() - b.x(), b.x() - a.x(), a.y() - b.y(), b.y() - a.y()};
        double[] q = {a.x() - box.left(), box.right() - a.x(), a.y() - box.top(), box.bottom() - a.y()};
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return false;
                }
            } else if (p[i] < 0) {
                from = Math.max(from, q[i] / p[i]);
            } else {
                to = Math.min(to, q[i] / p[i]);
            }
        }
        return from <= to;
    }
}
