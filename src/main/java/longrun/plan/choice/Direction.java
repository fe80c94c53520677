package longrun.plan.choice;

/** Which way a leg of pipe goes; north is any wall the person chooses. */
public enum Direction implements Named {
    NORTH,
    EAST,
    SOUTH,
    WEST,
    UP,
    DOWN;

    public Direction opposite() {
        return switch (this) {
            case NORTH -> SOUTH;
            case SOUTH -> NORTH;
            case EAST -> WEST;
            case WEST -> EAST;
            case UP -> DOWN;
            case DOWN -> UP;
        };
    }
}
