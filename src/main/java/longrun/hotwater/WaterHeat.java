package longrun.hotwater;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * The heat it takes to warm water: k in Btu/h for each gallon a minute and degF. Straight between the rows of the table,
 * on with the end slope beyond it (IAPWS-97, computed).
 */
public final class WaterHeat {

    private static final List<DataRow> ROWS =
            DataFile.read("water/water-heat.csv").rows();
    private static final double[] TEMP =
            ROWS.stream().mapToDouble(r -> r.number("temp_f")).toArray();
    private static final double[] K =
            ROWS.stream().mapToDouble(r -> r.number("btuh_per_gpm_f")).toArray();

    private WaterHeat() {}

    /** k at a water temperature, Btu/h per gal/min and degF. */
    public static double k(double degF) {
        int i = 1;
        while (i < TEMP.length - 1 && degF > TEMP[i]) {
            i++;
        }
        return K[i - 1] + (degF - TEMP[i - 1]) * (K[i] - K[i - 1]) / (TEMP[i] - TEMP[i - 1]);
    }

    /** Heat to warm a volume of water, Btu, k taken at the mean of the two temperatures. */
    public static double btu(double gallons, double fromF, double toF) {
        return gallons / 60 * k((fromF + toF) / 2) * (toF - fromF);
    }

    /** Water a heater can warm, gal/h, from Btu/h into the water. */
    public static double gallonsPerHour(double btuh, double fromF, double toF) {
        return 60 * btuh / (k((fromF + toF) / 2) * (toF - fromF));
    }
}
