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
 * How a kind of quantity is asked for and shown in the two unit systems.
 *
 * @param measure how it is read
 * @param customary unit in feet and Btu/h
 * @param metric unit in metres and kilowatts
 * @param pattern how its number is written
 */
public record Shown<Q extends Quantity>(Measure<Q> measure, String customary, String metric, String pattern) {

    public static final Shown<Length> LENGTH = new Shown<>(Measure.LENGTH, "ft", "m", "#,##0.##");
    public static final Shown<Length> SHORT_LENGTH = new Shown<>(Measure.LENGTH, "in", "cm", "#,##0.##");
    public static final Shown<Elevation> ELEVATION = new Shown<>(Measure.ELEVATION, "ft", "m", "#,##0");
    public static final Shown<HeatRate> HEAT = new Shown<>(Measure.HEAT_RATE, "Btu/h", "kW", "#,##0.#");
    public static final Shown<Temperature> TEMPERATURE = new Shown<>(Measure.TEMPERATURE, "degF", "degC", "0.#");
    public static final Shown<Pressure> APPLIANCE_PRESSURE =
            new Shown<>(Measure.PRESSURE, "in w.c.", "kPa", "#,##0.##");
    public static final Shown<Pressure> LINE_PRESSURE = new Shown<>(Measure.PRESSURE, "psi", "kPa", "#,##0.##");
    public static final Shown<Volume> ROOM_VOLUME = new Shown<>(Measure.VOLUME, "ft3", "L", "#,##0");
    public static final Shown<Volume> PIPE_VOLUME = new Shown<>(Measure.VOLUME, "ft3", "L", "0.##");
    public static final Shown<Volume> GALLONS = new Shown<>(Measure.VOLUME, "gal", "L", "#,##0.#");
    public static final Shown<Mass> WEIGHT = new Shown<>(Measure.MASS, "lb", "kg", "#,##0.#");
    public static final Shown<Ratio> SHARE = new Shown<>(Measure.RATIO, "%", "%", "0.##");
    public static final Shown<HeatingValue> HEATING_VALUE =
            new Shown<>(Measure.HEATING_VALUE, "Btu/gal", "Btu/gal", "#,##0");
    public static final Shown<Pressure> TANK_PRESSURE = new Shown<>(Measure.PRESSURE, "psi", "kPa", "#,##0.#");
    public static final Shown<Area> AREA = new Shown<>(Measure.AREA, "in2", "in2", "#,##0.#");
    public static final Shown<Flow> FLOW = new Shown<>(Measure.FLOW, "gal/min", "L/min", "0.##");
    public static final Shown<TimeSpan> MINUTES = new Shown<>(Measure.TIME, "min", "min", "0.#");
    public static final Shown<AirChange> AIR_CHANGE = new Shown<>(Measure.AIR_CHANGE, "ach", "ach", "0.##");

    public static final Shown<HeatLoss> HEAT_LOSS = new Shown<>(Measure.HEAT_LOSS, "Btu/(h.degF)", "W/K", "0.##");

    /** The unit a bare number has. */
    public String unit(UnitSystem system) {
        return system == UnitSystem.CUSTOMARY ? customary : metric;
    }

    /** The unit as it stands beside a label. */
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
        String number = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT))
                .format(unit.fromCanonical(value.canonical()));
        return number + " " + unitWords(system);
    }
}
