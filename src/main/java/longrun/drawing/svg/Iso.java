package longrun.drawing.svg;

import java.util.List;
import longrun.plan.choice.Direction;

/** The isometric sheet: north goes up to the right, east down to the right, up straight up. */
public final class Iso {

    public static final List<Direction> LEVEL =
            List.of(Direction.EAST, Direction.NORTH, Direction.WEST, Direction.SOUTH);

    private static final double COS = Math.sqrt(3) / 2;

    private Iso() {}

    /** One pixel in a direction. */
    public static Point of(Direction d) {
        return switch (d) {
            case NORTH -> new Point(COS, -0.5);
            case SOUTH -> new Point(-COS, 0.5);
            case EAST -> new Point(COS, 0.5);
            case WEST -> new Point(-COS, -0.5);
            case UP -> new Point(0, -1);
            case DOWN -> new Point(0, 1);
        };
    }

    public static boolean isLevel(Direction d) {
        return d != Direction.UP && d != Direction.DOWN;
    }

    /** A level direction across another one. */
    public static Direction across(Direction d) {
        return d == Direction.EAST || d == Direction.WEST ? Direction.NORTH : Direction.EAST;
    }
}
