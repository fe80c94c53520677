package longrun.capacity;

import java.util.OptionalDouble;
import longrun.plan.choice.Tube;

/**
 * Inside diameters of copper tube by type, 2018 International Fuel Gas Code Appendix A Table A.5.2, page 162. The
 * capacity tables use Type K. Type M is not in it.
 */
public final class CopperBores {

    private static final TableFile FILE = TableFile.load("fittings/copper-tube-inside-diameters.csv");

    private CopperBores() {}

    /**
     * Inside diameter in inches; empty where the table has none.
     *
     * @param size nominal for K and L, outside diameter for ACR; of drawn and annealed ACR the smaller bore counts
     */
    public static OptionalDouble boreIn(Tube tube, String size) {
        return FILE.rows().stream()
                .filter(r -> r.fields().get(0).replaceFirst("\\(.\\)$", "").equals(tube.written()))
                .filter(r -> r.fields().get(1).equals(size))
                .mapToDouble(r -> FILE.positive(r.line(), 3, r.fields().get(2)))
                .min();
    }
}
