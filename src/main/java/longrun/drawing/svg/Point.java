package longrun.drawing.svg;

/**
 * A place on the sheet.
 *
 * @param x pixels to the right
 * @param y pixels downward
 */
public record Point(double x, double y) {

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** This far along a direction. */
    public Point along(Point unit, double length) {
        return new Point(x + unit.x * length, y + unit.y * length);
    }

    /** The point a share of the way to another. */
    public Point towards(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    public double distance(Point other) {
        return Math.sqrt((other.x - x) * (other.x - x) + (other.y - y) * (other.y - y));
    }

    /** The unit vector to another point. */
    public Point unit(Point other) {
        double d = distance(other);
        return d == 0 ? new Point(1, 0) : new Point((other.x - x) / d, (other.y - y) / d);
    }
}
