package longrun.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One kind of quantity: its units, its bounds and how it is read from what a person wrote. Every quantity carries its
 * unit; a bare number is refused with the units that would do.
 *
 * @param <Q> the value type
 */
public final class Measure<Q extends Quantity> {

    private static final double JOULES_PER_BTU = 1055.05585262; // NIST SP 811 B.8, international table Btu
    private static final double LITRES_PER_GALLON = 3.785411784; // NIST SP 811 B.8
    private static final double GALLONS_PER_CUBIC_FOOT = 1728.0 / 231; // NIST Handbook 44 appendix C
    private static final double KPA_PER_PSI = 6.894757293168; // NIST SP 811 B.8
    private static final double BTUH_PER_WATT = 3600 / JOULES_PER_BTU;

    public static final Measure<Length> LENGTH = new Measure<>(
            "length",
            List.of(
                    Unit.of("ft", 1, "'", "feet", "foot"),
                    Unit.of("in", 1.0 / 12, "\"", "inch", "inches"),
                    Unit.of("m", 1 / 0.3048),
                    Unit.of("cm", 0.01 / 0.3048),
                    Unit.of("mm", 0.001 / 0.3048)),
            0,
            100_000,
            "100,000 ft",
            Length::new);

    /** A height above the sea, which may lie below it; no land is lower or higher (memory). */
    public static final Measure<Elevation> ELEVATION =
            new Measure<>("elevation", LENGTH.units, -1500, 30_000, "30,000 ft", Elevation::new);

    public static final Measure<Pressure> PRESSURE = new Measure<>(
            "pressure",
            List.of(
                    Unit.of("in w.c.", 1 / Pressure.IN_WC_PER_PSI, "inWC"),
                    Unit.of("psi", 1, "psig"),
                    Unit.of("kPa", 1 / KPA_PER_PSI),
                    Unit.of("mbar", 0.1 / KPA_PER_PSI),
                    Unit.of("bar", 100 / KPA_PER_PSI)),
            0,
            300,
            "300 psi",
            Pressure::ofPsi);

    public static final Measure<HeatRate> HEAT_RATE = new Measure<>(
            "heat rate",
            List.of(
                    Unit.of("Btu/h", 1, "Btuh", "Btu/hr"),
                    Unit.of("kBtu/h", 1000, "MBH", "kBtuh"),
                    Unit.of("kW", 1000 * BTUH_PER_WATT),
                    Unit.of("MJ/h", 1e6 / JOULES_PER_BTU)),
            0,
            1e9,
            "1,000,000,000 Btu/h",
            HeatRate::new);

    public static final Measure<Volume> VOLUME = new Measure<>(
            "volume",
            List.of(
                    Unit.of("gal", 1, "gallon", "gallons"),
                    Unit.of("L", 1 / LITRES_PER_GALLON),
                    Unit.of("ft3", GALLONS_PER_CUBIC_FOOT)),
            0,
            1e6,
            "1,000,000 gal",
            Volume::new);

    public static final Measure<Temperature> TEMPERATURE = new Measure<>(
            "temperature",
            List.of(Unit.of("degF", 1, "F", "\u00b0F"), new Unit("degC", 1.8, 32 / 1.8, List.of("C", "\u00b0C"))),
            -100,
            300,
            "300 degF",
            Temperature::new);

    public static final Measure<Flow> FLOW = new Measure<>(
            "flow",
            List.of(
                    Unit.of("gal/min", 1, "gpm"),
                    Unit.of("L/min", 1 / LITRES_PER_GALLON),
                    Unit.of("gal/h", 1.0 / 60),
                    Unit.of("ft3/h", GALLONS_PER_CUBIC_FOOT / 60, "cfh")),
            0,
            1e6,
            "1,000,000 gal/min",
            Flow::new);

    public static final Measure<Mass> MASS = new Measure<>(
            "weight", List.of(Unit.of("lb", 1), Unit.of("kg", 1 / 0.45359237)), 0, 1e6, "1,000,000 lb", Mass::new);

    public static final Measure<Ratio> RATIO =
            new Measure<>("share", List.of(Unit.of("%", 0.01)), 0, 10, "1,000 %", Ratio::new);

    public static final Measure<HeatingValue> HEATING_VALUE = new Measure<>(
            "heating value", List.of(Unit.of("Btu/gal", 1)), 1, 1e6, "1,000,000 Btu/gal", HeatingValue::new);

    public static final Measure<HeatLoss> HEAT_LOSS = new Measure<>(
            "heat loss",
            List.of(Unit.of("Btu/(h.degF)", 1, "Btu/h.F"), Unit.of("W/K", BTUH_PER_WATT / 1.8)),
            0,
            1e6,
            "1,000,000 Btu/(h.degF)",
            HeatLoss::new);

    public static final Measure<TimeSpan> TIME = new Measure<>(
            "time",
            List.of(Unit.of("min", 1), Unit.of("h", 60), Unit.of("d", 1440)),
            0,
            5_256_000,
            "3,650 d",
            TimeSpan::new);

    public static final Measure<WireGauge> WIRE =
            new Measure<>("wire size", List.of(Unit.of("AWG", 1)), 0, 40, "40 AWG", WireGauge::new);

    public static final Measure<Area> AREA =
            new Measure<>("area", List.of(Unit.of("in2", 1)), 0, 1e6, "1,000,000 in2", Area::new);

    public static final Measure<AirChange> AIR_CHANGE =
            new Measure<>("air change", List.of(Unit.of("ach", 1)), 0, 1000, "1,000 ach", AirChange::new);

    private static final Pattern SHAPE = Pattern.compile("(-?)\\s*([0-9.][0-9.,/\\- ]*|)(.*)", Pattern.DOTALL);
    private static final Pattern FEET_INCHES = Pattern.compile(
            "([0-9.,]+)\\s*(?:ft\\.?|feet|foot|')\\s*([0-9.,/\\-]+)\\s*(?:in\\.?|inch|inches|\")",
            Pattern.CASE_INSENSITIVE);
    static final int LONGEST = 200;

    private final String name;
    private final List<Unit> units;
    private final double least;
    private final double greatest;
    private final String greatestText;
    private final DoubleFunction<Q> make;

    private Measure(
            String name, List<Unit> units, double least, double greatest, String greatestText, DoubleFunction<Q> make) {
        this.name = name;
        this.units = units;
        this.least = least;
        this.greatest = greatest;
        this.greatestText = greatestText;
        this.make = make;
    }

    public String name() {
        return name;
    }

    public List<Unit> units() {
        return units;
    }

    /**
     * Reads what a person wrote.
     *
     * @throws NotAQuantity with what to write instead
     */
    public Q read(String written) {
        String text = written.replace('\u2019', '\'')
                .replace('\u2032', '\'')
                .replace('\u2033', '"')
                .strip();
        if (text.length() > LONGEST) {
            throw new NotAQuantity("a " + name + " of " + text.length() + " characters is too long");
        }
        Matcher feetInches = FEET_INCHES.matcher(text);
        if (units == LENGTH.units && feetInches.matches()) {
            return bounded(feetAndInches(feetInches), text);
        }
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches() || shape.group(2).isBlank()) {
            throw new NotAQuantity(
                    "\"" + NumberText.shortened(text) + "\" is not " + withArticle() + ": write " + example());
        }
        Unit unit = unit(shape.group(3), shape.group(2).strip());
        double number = NumberText.read(shape.group(2));
        boolean negative = !shape.group(1).isEmpty();
        if (negative && least == 0) {
            throw new NotAQuantity("\"" + text + "\" is below zero: write " + withArticle() + " of 0 or more");
        }
        return bounded(unit.toCanonical(negative ? -number : number), text);
    }

    private static double feetAndInches(Matcher m) {
        double inches = NumberText.read(m.group(2));
        if (inches >= 12) {
            throw new NotAQuantity("\"" + m.group() + "\": inches after feet run from 0 to under 12");
        }
        return NumberText.read(m.group(1)) + inches / 12;
    }

    private Q bounded(double canonical, String text) {
        if (canonical > greatest) {
            throw new NotAQuantity("\"" + text + "\" is more than " + greatestText + ", which no house has: look for a"
                    + " slipped digit or unit");
        }
        if (canonical < least) {
            throw new NotAQuantity("\"" + text + "\" is less than any " + name + " can be here: look for a slipped"
                    + " digit or unit");
        }
        return make.apply(canonical);
    }

    private Unit unit(String written, String number) {
        String wanted = Unit.normalise(written);
        if (wanted.isEmpty()) {
            throw new NotAQuantity("\"" + number + "\" has no unit: write " + number + " with one of " + unitNames());
        }
        return findUnit(wanted).orElseThrow(() -> new NotAQuantity(unknown(written.strip(), wanted, number)));
    }

    private Optional<Unit> findUnit(String normalised) {
        return units.stream().filter(u -> u.isWritten(normalised)).findFirst();
    }

    private String unknown(String written, String wanted, String number) {
        String afterMm = wanted.startsWith("mm") ? wanted.substring(2) : "";
        String afterM = wanted.startsWith("m") ? wanted.substring(1) : "";
        Optional<Unit> base = findUnit(afterMm).or(() -> findUnit(afterM));
        if (base.isPresent()) {
            String unit = base.get().name();
            return "\"" + written + "\" is read as thousand " + unit + " by some and as million " + unit
                    + " by others: write the whole number, such as " + number + ",000 " + unit + " or " + number
                    + ",000,000 " + unit;
        }
        return "\"" + NumberText.shortened(written) + "\" is not a unit of " + name + ": write one of " + unitNames();
    }

    private String withArticle() {
        return ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ") + name;
    }

    private String unitNames() {
        return units.stream().map(Unit::name).collect(Collectors.joining(", "));
    }

    private String example() {
        return "a number and a unit, such as " + (units == HEAT_RATE.units ? "65,000 " : "12 ")
                + units.get(0).name();
    }
}
