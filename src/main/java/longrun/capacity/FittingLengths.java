package longrun.capacity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;
import longrun.quantity.Length;

/**
 * Feet of straight pipe that lose as much as one fitting: 2018 IRC (IFGC) Appendix A Table A.2.2. Steel takes the
 * printed values of screwed fittings; every other bore L = k d / 0.36, the table's own relation.
 */
public final class FittingLengths {

    /** Publication and table behind {@link #length}. */
    public static final String SOURCE = "2018 International Residential Code, Appendix A, Table A.2.2";

    /** Bends a run of CSST has free in its table (2018 IRC G2413.4(16) footnote). */
    public static final int CSST_FREE_BENDS = 4;

    /** Fittings a run of CSST has free in its table (2018 IRC G2413.4(16) footnote). */
    public static final int CSST_FREE_FITTINGS = 2;

    /** For each further bend or fitting of CSST, L = 1.3 n (2018 IRC G2413.4(16) footnote; the 1.3 memory). */
    public static final Length CSST_EACH = Length.ofFeet(1.3);

    private static final Map<String, Double> STEEL = steel();

    private FittingLengths() {}

    /**
     * Equivalent length of one turn. A bend in steel, which is not bent on site, counts as a 90 degree elbow.
     *
     * @param size as the material's tables write it
     * @throws IllegalArgumentException for CSST, which has no bore, or a size the material does not have
     */
    public static Length length(Turn turn, Material material, String size) {
        Turn counted = material == Material.STEEL && turn == Turn.BEND ? Turn.ELBOW_90 : turn;
        if (material == Material.STEEL) {
            Double printed = STEEL.get(counted + " " + size);
            if (printed == null) {
                throw new IllegalArgumentException("no steel pipe of size " + size);
            }
            return Length.ofFeet(printed);
        }
        Bore bore = bore(material, size)
                .orElseThrow(() -> new IllegalArgumentException("no bore of " + material.label() + " " + size));
        return ofBore(counted, bore);
    }

    /** Equivalent length by the relation L = k d / 0.36, d in inches and L in feet. */
    static Length ofBore(Turn turn, Bore bore) {
        return Length.ofFeet(turn.k() * bore.inches() / 0.36);
    }

    /** How sure {@link #length} is: the steel values are printed, the others follow from the printed relation. */
    public static Confidence confidence(Material material) {
        return material == Material.STEEL ? Confidence.PRINT : Confidence.COMPUTED;
    }

    /** Inside diameter by which a size is sized; empty for CSST and for sizes the tables do not have. */
    public static Optional<Bore> bore(Material material, String size) {
        return CapacityTables.standard().all().stream()
                .filter(t -> t.material() == material)
                .filter(t -> t.findColumn(size).isPresent())
                .findFirst()
                .flatMap(t -> t.bore(t.findColumn(size).getAsInt()));
    }

    private static Map<String, Double> steel() {
        Map<String, Double> feet = new HashMap<>();
        for (DataRow row : DataFile.read("fittings/equivalent-lengths.csv").rows()) {
            for (Turn turn : List.of(Turn.ELBOW_90, Turn.ELBOW_45, Turn.TEE_BRANCH)) {
                feet.put(turn + " " + row.text("nominal"), row.positive(turn.steelColumn()));
            }
        }
        return Map.copyOf(feet);
    }
}
