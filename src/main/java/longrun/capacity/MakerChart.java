package longrun.capacity;

import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Material;
import longrun.quantity.Pressure;

/**
 * A fitting maker's line sizing chart for polyethylene at 10 psi and 1 psi drop (secondary), which holds PE capacities
 * down where it says less than the code's equation.
 */
final class MakerChart {

    private static final Pressure INLET = Pressure.ofPsi(10);
    private static final Pressure DROP = Pressure.ofPsi(1);

    private final List<String> columns;
    private final double[] rowsFt;
    private final double[][] btuh;

    private MakerChart(List<String> columns, double[] rowsFt, double[][] btuh) {
        this.columns = columns;
        this.rowsFt = rowsFt;
        this.btuh = btuh;
    }

    static MakerChart load() {
        DataFile file = DataFile.read("tables/pe-mixed-10psi-1psi-propane-maker.csv");
        List<String> names = file.headings();
        double[] feet = new double[file.rows().size()];
        double[][] btuh = new double[feet.length][names.size() - 1];
        for (int r = 0; r < feet.length; r++) {
            DataRow row = file.rows().get(r);
            feet[r] = row.positive("length_ft");
            for (int c = 1; c < names.size(); c++) {
                btuh[r][c - 1] = 1000 * row.positive(names.get(c));
            }
        }
        return new MakerChart(names.subList(1, names.size()), feet, btuh);
    }

    /** Whether the chart holds capacities down: less pressure or less drop never carries more than it says. */
    static boolean caps(Pressure inlet, Pressure drop) {
        return inlet.fitsUpTo(INLET) && drop.fitsUpTo(DROP);
    }

    /**
     * The chart's capacity at the equal or next longer row, beyond its last row that row's; empty where it has no such
     * size.
     */
    OptionalDouble btuh(Material material, String size, double lengthFt) {
        int column = columns.indexOf(material == Material.PE_PIPE ? size + " IPS" : size);
        for (int r = 0; column >= 0 && r < rowsFt.length; r++) {
            if (rowsFt[r] >= lengthFt) {
                return OptionalDouble.of(btuh[r][column]);
            }
        }
        return column < 0 ? OptionalDouble.empty() : OptionalDouble.of(btuh[rowsFt.length - 1][column]);
    }
}
