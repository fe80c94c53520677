package longrun.quantity;

/** An area, in square inches. */
public record Area(double squareInches) implements Quantity, Comparable<Area> {

    public Area {
        squareInches = Quantity.finite(squareInches);
    }

    @Override
    public double canonical() {
        return squareInches;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareInches, other.squareInches);
    }
}
