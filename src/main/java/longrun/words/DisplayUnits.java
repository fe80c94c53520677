package longrun.words;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import longrun.quantity.AirChange;
import longrun.quantity.Area;
import longrun.quantity.Elevation;
import longrun.quantity.Flow;
import longrun.quantity.HeatLoss;
import longrun.quantity.HeatRate;
import longrun.quantity.HeatingValue;
import longrun.quantity.Length;
import longrun.quantity.Mass;
import longrun.quantity.Measure;
import longrun.quantity.Pressure;
import longrun.quantity.Quantity;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.quantity.TimeSpan;
import longrun.quantity.Unit;
import longrun.quantity.Volume;

/**
 * The units in which a kind of quantity is asked for and shown in the two unit systems.
 *
 * @param measure the kind of quantity, which reads what is typed
 * @param customary name of the unit in the customary system
 * @param metric name of the unit in the metric system
 * @param pattern how its number is written ({@link DecimalFormat})
 * @param wholeFrom the figure from which it is written whole: nobody reads tenths beside thousands
 */
public record DisplayUnits<Q extends Quantity>(
        Measure<Q> measure, String customary, String metric, String pattern, double wholeFrom) {

    public DisplayUnits(Measure<Q> measure, String customary, String metric, String pattern) {
        this(measure, customary, metric, pattern, Double.POSITIVE_INFINITY);
    }

    public static final DisplayUnits<Length> LENGTH = new DisplayUnits<>(Measure.LENGTH, "ft", "m", "#,##0.##");
    public static final DisplayUnits<Length> SHORT_LENGTH = new DisplayUnits<>(Measure.LENGTH, "in", "cm", "#,##0.##");
    public static final DisplayUnits<Elevation> ELEVATION = new DisplayUnits<>(Measure.ELEVATION, "ft", "m", "#,##0");
    public static final DisplayUnits<HeatRate> HEAT =
            new DisplayUnits<>(Measure.HEAT_RATE, "Btu/h", "kW", "#,##0.#", 1000);
    public static final DisplayUnits<Temperature> TEMPERATURE =
            new DisplayUnits<>(Measure.TEMPERATURE, "degF", "degC", "0.#");
    public static final DisplayUnits<Pressure> APPLIANCE_PRESSURE =
            new DisplayUnits<>(Measure.PRESSURE, "in w.c.", "kPa", "#,##0.##");
    public static final DisplayUnits<Pressure> LINE_PRESSURE =
            new DisplayUnits<>(Measure.PRESSURE, "psi", "kPa", "#,##0.##");
    public static final DisplayUnits<Volume> ROOM_VOLUME = new DisplayUnits<>(Measure.VOLUME, "ft3", "L", "#,##0");
    public static final DisplayUnits<Volume> PIPE_VOLUME = new DisplayUnits<>(Measure.VOLUME, "ft3", "L", "0.##");
    public static final DisplayUnits<Volume> GALLONS = new DisplayUnits<>(Measure.VOLUME, "gal", "L", "#,##0.#");
    public static final DisplayUnits<Mass> WEIGHT = new DisplayUnits<>(Measure.MASS, "lb", "kg", "#,##0.#");
    public static final DisplayUnits<Ratio> SHARE = new DisplayUnits<>(Measure.RATIO, "%", "%", "0.##");
    public static final DisplayUnits<HeatingValue> HEATING_VALUE =
            new DisplayUnits<>(Measure.HEATING_VALUE, "Btu/gal", "Btu/gal", "#,##0");
    public static final DisplayUnits<Pressure> TANK_PRESSURE =
            new DisplayUnits<>(Measure.PRESSURE, "psi", "kPa", "#,##0.#");
    public static final DisplayUnits<Area> AREA = new DisplayUnits<>(Measure.AREA, "in2", "in2", "#,##0.#");
    public static final DisplayUnits<Flow> FLOW = new DisplayUnits<>(Measure.FLOW, "gal/min", "L/min", "0.##");
    public static final DisplayUnits<TimeSpan> MINUTES = new DisplayUnits<>(Measure.TIME, "min", "min", "0.#");
    public static final DisplayUnits<AirChange> AIR_CHANGE =
            new DisplayUnits<>(Measure.AIR_CHANGE, "ach", "ach", "0.##");

    public static final DisplayUnits<HeatLoss> HEAT_LOSS =
            new DisplayUnits<>(Measure.HEAT_LOSS, "Btu/(h.degF)", "W/K", "0.##");

    /** The unit of a number typed without one. */
    public String unit(UnitSystem system) {
        return system == UnitSystem.CUSTOMARY ? customary : metric;
    }

    /** The unit as shown on screen and paper. */
    public String unitWords(UnitSystem system) {
        return switch (unit(system)) {
            case "degF" -> "\u00b0F";
            case "degC" -> "\u00b0C";
            case "in w.c." -> "in. w.c.";
            case "ft3" -> "ft\u00b3";
            case "in2" -> "sq in.";
            case "Btu/(h.degF)" -> "Btu/h for each \u00b0F";
            case "ach" -> "air changes an hour";
            default -> unit(system);
        };
    }

    /** The quantity with its unit. */
    public String words(UnitSystem system, Q value) {
        Unit unit = measure.units().stream()
                .filter(u -> u.name().equals(unit(system)))
                .findFirst()
                .orElseThrow();
        double figure = unit.fromCanonical(value.canonical());
        String digits = figure < wholeFrom ? pattern : "#,##0";
        String number = new DecimalFormat(digits, DecimalFormatSymbols.getInstance(Locale.ROOT)).format(figure);
        return number + " " + unitWords(system);
    }
}
