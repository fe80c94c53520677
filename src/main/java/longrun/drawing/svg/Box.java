package longrun.drawing.svg;

import java.util.List;

/** An upright rectangle on the sheet, pixels. */
public record Box(double left, double top, double right, double bottom) {

    public static Box around(Point p, double halfWidth, double halfHeight) {
        return new Box(p.x() - halfWidth, p.y() - halfHeight, p.x() + halfWidth, p.y() + halfHeight);
    }

    public static Box of(List<Point> points) {
        Box b = around(points.get(0), 0, 0);
        for (Point p : points) {
            b = b.with(around(p, 0, 0));
        }
        return b;
    }

    public Box with(Box o) {
        return new Box(
                Math.min(left, o.left), Math.min(top, o.top), Math.max(right, o.right), Math.max(bottom, o.bottom));
    }

    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    public Box moved(double dx, double dy) {
        return new Box(left + dx, top + dy, right + dx, bottom + dy);
    }

    /** What it has in common with another that overlaps it. */
    public Box within(Box o) {
        return new Box(
                Math.max(left, o.left), Math.max(top, o.top), Math.min(right, o.right), Math.min(bottom, o.bottom));
    }

    /** Whether another lies in it whole. */
    public boolean holds(Box o) {
        return o.left >= left && o.right <= right && o.top >= top && o.bottom <= bottom;
    }

    public boolean overlaps(Box o) {
        return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }
}
