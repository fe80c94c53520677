package longrun.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.TankKind;

/** The standard sizes tanks come in, and how far they must stand off (sizes secondary or memory; distances NFPA 58 6.4.1). */
public final class StandardTanks {

    /**
     * One size.
     *
     * @param diameterIn outside, inches
     * @param lengthIn overall; the height of an upright one
     */
    public record Size(
            String id,
            TankKind kind,
            Orientation orientation,
            double waterGal,
            OptionalDouble alsoGal,
            double diameterIn,
            double lengthIn,
            OptionalDouble propaneLb,
            Confidence confidence) {

        /** Whether it is sold under that capacity. */
        public boolean holds(double gallons) {
            return Math.abs(gallons - waterGal) <= 0.01 * waterGal
                    || alsoGal.isPresent() && Math.abs(gallons - alsoGal.getAsDouble()) <= 0.01 * gallons;
        }
    }

    /**
     * Least distances, ft.
     *
     * @param buildingFt from buildings and lines that may be built on
     * @param aloneFt the same for one tank at least 25 ft from any other over 125 gal
     * @param betweenFt between tanks above ground
     */
    public record Distances(double buildingFt, double aloneFt, double betweenFt) {}

    private static final List<Size> SIZES = DataFile.read("tanks/tank-dimensions.csv").rows().stream()
            .map(r -> new Size(
                    r.text("id"),
                    r.choice("kind", TankKind.class),
                    r.choice("orientation", Orientation.class),
                    r.number("water_gal"),
                    r.findNumber("also_gal"),
                    r.number("diameter_in"),
                    r.number("length_in"),
                    r.findNumber("propane_lb"),
                    r.choice("confidence", Confidence.class)))
            .toList();
    private static final List<Band> BANDS = DataFile.read("tanks/tank-distances.csv").rows().stream()
            .map(r -> new Band(
                    r.number("over_gal"),
                    r.number("up_to_gal"),
                    new Distances(r.number("above_ft"), r.number("alone_ft"), r.number("between_ft")),
                    new Distances(r.number("underground_ft"), r.number("underground_ft"), 0)))
            .toList();

    /** Distances of tanks over one capacity up to another. */
    private record Band(double overGal, double upToGal, Distances above, Distances underground) {}

    private StandardTanks() {}

    public static List<Size> all() {
        return SIZES;
    }

    /** The size of a capacity; of two shells sold under it the one with the smaller D x L, which gives less vapour. */
    public static Optional<Size> find(TankKind kind, Orientation orientation, double waterGal) {
        return SIZES.stream()
                .filter(s -> s.kind() == kind && s.orientation() == orientation && s.holds(waterGal))
                .min(Comparator.comparingDouble(s -> s.diameterIn() * s.lengthIn()));
    }

    /** One horizontal size for each capacity, smallest first. */
    public static List<Size> horizontal() {
        List<Size> out = new ArrayList<>();
        SIZES.stream()
                .filter(s -> s.kind() == TankKind.ASME && s.orientation() == Orientation.HORIZONTAL)
                .sorted(Comparator.comparingDouble(Size::waterGal)
                        .thenComparingDouble(s -> s.diameterIn() * s.lengthIn()))
                .forEachOrdered(s -> {
                    if (out.isEmpty() || out.get(out.size() - 1).waterGal() != s.waterGal()) {
                        out.add(s);
                    }
                });
        return List.copyOf(out);
    }

    /** How far a tank must stand off, empty beyond the table. */
    public static Optional<Distances> distances(double waterGal, boolean underground) {
        return BANDS.stream()
                .filter(b -> waterGal > b.overGal() && waterGal <= b.upToGal())
                .findFirst()
                .map(b -> underground ? b.underground() : b.above());
    }
}
