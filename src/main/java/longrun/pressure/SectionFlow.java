package longrun.pressure;

import java.util.Optional;
import longrun.capacity.CapacityTable;
import longrun.capacity.FittingLengths;
import longrun.capacity.FlowEquation;
import longrun.capacity.TableLength;
import longrun.plan.choice.Material;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;

/**
 * One section as the gas meets it.
 *
 * @param lengthFt measured and counted fittings; NaN unknown
 * @param boreIn of the size in use; NaN where it has none or there is no size
 * @param table the table of the size in use
 * @param column its column
 */
record SectionFlow(double lengthFt, double boreIn, Optional<CapacityTable> table, int column) {

    static SectionFlow of(Sizing sizing, int section) {
        SectionSize size = sizing.section(section);
        Optional<Length> measured = sizing.piping().measured(section);
        Optional<Length> counted = sizing.counted(section);
        double length = measured.isPresent() && counted.isPresent()
                ? measured.get().feet() + counted.get().feet()
                : Double.NaN;
        return new SectionFlow(
                length,
                boreIn(size),
                size.used().isPresent() ? size.table() : Optional.empty(),
                size.used().orElse(-1));
    }

    /** A table the person loaded names sizes only; pipe and tube are known by their size all the same. */
    private static double boreIn(SectionSize size) {
        if (size.bore().isPresent() || size.size().isEmpty()) {
            return size.bore().map(Bore::inches).orElse(Double.NaN);
        }
        Material material = size.table().orElseThrow().material();
        return material == Material.CSST
                ? Double.NaN
                : FittingLengths.bore(material, size.size().get())
                        .map(Bore::inches)
                        .orElse(Double.NaN);
    }

    boolean isKnown() {
        return !Double.isNaN(lengthFt) && table.isPresent();
    }

    boolean hasBore() {
        return boreIn > 0;
    }

    /**
     * Drop in in. w.c.; NaN where it is not known, infinite where the pressure cannot push the load through.
     *
     * @param runInlet the regulator's setting, which decides the equation
     * @param startInWc pressure where the section begins
     */
    double dropInWc(Pressure runInlet, double startInWc, double loadBtuh) {
        if (!isKnown() || Double.isNaN(startInWc) || Double.isNaN(loadBtuh)) {
            return Double.NaN;
        }
        if (loadBtuh == 0) {
            return 0;
        }
        if (startInWc <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        if (hasBore()) {
            return FlowEquation.drop(
                            Bore.ofInches(boreIn),
                            runInlet,
                            Pressure.ofInWc(startInWc),
                            HeatRate.ofBtuh(loadBtuh),
                            Length.ofFeet(lengthFt))
                    .map(Pressure::inWc)
                    .orElse(Double.POSITIVE_INFINITY);
        }
        return TableLength.find(table.orElseThrow(), column, HeatRate.ofBtuh(loadBtuh))
                .map(carries -> table.get().drop().inWc() * lengthFt / carries.feet())
                .orElse(Double.NaN);
    }
}
