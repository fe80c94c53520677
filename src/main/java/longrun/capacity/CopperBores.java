package longrun.capacity;

import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Named;
import longrun.plan.choice.Tube;

/**
 * Inside diameters of copper tube by type, 2018 International Fuel Gas Code Appendix A Table A.5.2, page 162. The
 * capacity tables use Type K. Type M is not in it.
 */
public final class CopperBores {

    private static final List<Bore> ALL = DataFile.read("fittings/copper-tube-inside-diameters.csv").rows().stream()
            .map(r -> new Bore(tube(r), r.text("size_in"), r.positive("inside_diameter_in")))
            .toList();

    private record Bore(Tube tube, String size, double inches) {}

    private CopperBores() {}

    /** The type, drawn or annealed: {@code ACR(D)}. */
    private static Tube tube(DataRow row) {
        String type = row.text("type").replaceFirst("\\([DA]\\)$", "");
        return Named.find(Tube.class, type).orElseThrow(() -> row.fault("type", "'" + type + "' is no type of tube"));
    }

    /**
     * Inside diameter in inches; empty where the table has none.
     *
     * @param size nominal for K and L, outside diameter for ACR; of drawn and annealed ACR the smaller bore counts
     */
    public static OptionalDouble boreIn(Tube tube, String size) {
        return ALL.stream()
                .filter(b -> b.tube() == tube && b.size().equals(size))
                .mapToDouble(Bore::inches)
                .min();
    }
}
