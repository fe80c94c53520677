package longrun.tank;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/** Draw a 100 lb cylinder can keep up: straight between rows and columns of its table, unknown outside (secondary). */
public final class CylinderTable {

    /** The cylinder the table is for, pounds of propane when full. */
    public static final double FULL_LB = 100;

    private static final DataFile FILE = DataFile.read("tanks/cylinder-vaporisation.csv");
    private static final double[] TEMP =
            FILE.headings().stream().skip(1).mapToDouble(Double::parseDouble).toArray();
    private static final List<DataRow> ROWS = FILE.rows().stream()
            .sorted(Comparator.comparingDouble(r -> r.number("pounds")))
            .toList();
    private static final double[] POUNDS =
            ROWS.stream().mapToDouble(r -> r.number("pounds")).toArray();
    private static final double[][] BTUH = ROWS.stream()
            .map(r -> FILE.headings().stream().skip(1).mapToDouble(r::number).toArray())
            .toArray(double[][]::new);

    private CylinderTable() {}

    /** Btu/h by pounds left and air temperature, empty outside the table. */
    public static OptionalDouble btuh(double pounds, double airF) {
        if (!(pounds >= POUNDS[0]
                && pounds <= POUNDS[POUNDS.length - 1]
                && airF >= TEMP[0]
                && airF <= TEMP[TEMP.length - 1])) {
            return OptionalDouble.empty();
        }
        int row = above(POUNDS, pounds);
        int column = above(TEMP, airF);
        double down = (pounds - POUNDS[row - 1]) / (POUNDS[row] - POUNDS[row - 1]);
        double across = (airF - TEMP[column - 1]) / (TEMP[column] - TEMP[column - 1]);
        return OptionalDouble.of(mix(
                mix(BTUH[row - 1][column - 1], BTUH[row - 1][column], across),
                mix(BTUH[row][column - 1], BTUH[row][column], across),
                down));
    }

    private static int above(double[] grid, double value) {
        int i = 1;
        while (i < grid.length - 1 && value > grid[i]) {
            i++;
        }
        return i;
    }

    private static double mix(double from, double to, double share) {
        return from + (to - from) * share;
    }
}
