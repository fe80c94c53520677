package longrun.drawing.route;

import java.util.Locale;

/** The units a drawing is lettered in. */
public enum DrawingUnits {
    CUSTOMARY,
    METRIC;

    /** A leg's length with its unit; a whole number of feet without a decimal. */
    String length(double feet) {
        if (this == METRIC) {
            return String.format(Locale.ROOT, "%.2f m", feet * 0.3048);
        }
        long tenths = Math.round(feet * 10);
        return tenths % 10 == 0 ? tenths / 10 + " ft" : String.format(Locale.ROOT, "%.1f ft", tenths / 10.0);
    }

    /** A load with its unit. */
    String heat(double btuh) {
        // 1 kW is 3412.142 Btu/h (International Table)
        return this == METRIC
                ? String.format(Locale.ROOT, "%,.1f kW", btuh * 1.05505585262 / 3600)
                : String.format(Locale.ROOT, "%,.0f Btu/h", btuh);
    }

    /** A regulator's outlet. */
    String pressure(double psi, double inWc) {
        if (this == METRIC) {
            return plain(psi * 6.894757) + " kPa";
        }
        return psi < 1 ? plain(inWc) + " in. w.c." : plain(psi) + " psi";
    }

    private static String plain(double v) {
        String s = String.format(Locale.ROOT, "%.2f", v);
        return s.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
