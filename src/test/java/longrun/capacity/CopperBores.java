package longrun.capacity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Named;
import longrun.plan.choice.Tube;
import longrun.quantity.Bore;

/**
 * Inside diameters of copper tube by type, 2018 International Fuel Gas Code Appendix A Table A.5.2, page 162. The
 * capacity tables use Type K. Type M is not in it.
 */
public final class CopperBores {

    private static final List<Sold> ALL = DataFile.read("fittings/copper-tube-inside-diameters.csv").rows().stream()
            .map(r -> new Sold(tube(r), r.text("size_in"), Bore.ofInches(r.positive("inside_diameter_in"))))
            .toList();

    private record Sold(Tube tube, String size, Bore bore) {}

    private CopperBores() {}

    /** The type, drawn or annealed: {@code ACR(D)}. */
    private static Tube tube(DataRow row) {
        String type = row.text("type").replaceFirst("\\([DA]\\)$", "");
        return Named.find(Tube.class, type).orElseThrow(() -> row.fault("type", "'" + type + "' is no type of tube"));
    }

    /**
     * Inside diameter; empty where the table has none.
     *
     * @param size nominal for K and L, outside diameter for ACR; of drawn and annealed ACR the smaller bore counts
     */
    public static Optional<Bore> bore(Tube tube, String size) {
        return ALL.stream()
                .filter(b -> b.tube() == tube && b.size().equals(size))
                .map(Sold::bore)
                .min(Comparator.naturalOrder());
    }
}
