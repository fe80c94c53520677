package longrun.plan.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import longrun.plan.Distance;
import longrun.plan.FittingAllowance;
import longrun.plan.GaugeReading;
import longrun.plan.Leg;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Named;
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
import longrun.quantity.NotAQuantity;
import longrun.quantity.Pressure;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.quantity.TimeSpan;
import longrun.quantity.Typed;
import longrun.quantity.Volume;
import longrun.quantity.WireGauge;

/** How each single value of a plan is read from its text. */
final class Values {

    private static final double GREATEST_BARE_NUMBER = 1e12;

    /** Years a gauge reading or a delivery can be of; a date far off would have a tank's level followed for ages. */
    private static final int FIRST_YEAR = 1990;

    private static final int LAST_YEAR = 2100;

    static final Map<Class<?>, Measure<?>> MEASURES = measures();

    private static final Map<Class<?>, Function<String, Object>> TEXTS = texts();

    private Values() {}

    private static Map<Class<?>, Measure<?>> measures() {
        Map<Class<?>, Measure<?>> m = new LinkedHashMap<>();
        m.put(Length.class, Measure.LENGTH);
        m.put(Elevation.class, Measure.ELEVATION);
        m.put(Pressure.class, Measure.PRESSURE);
        m.put(HeatRate.class, Measure.HEAT_RATE);
        m.put(Volume.class, Measure.VOLUME);
        m.put(Temperature.class, Measure.TEMPERATURE);
        m.put(Flow.class, Measure.FLOW);
        m.put(Mass.class, Measure.MASS);
        m.put(Ratio.class, Measure.RATIO);
        m.put(HeatingValue.class, Measure.HEATING_VALUE);
        m.put(HeatLoss.class, Measure.HEAT_LOSS);
        m.put(TimeSpan.class, Measure.TIME);
        m.put(WireGauge.class, Measure.WIRE);
        m.put(Area.class, Measure.AREA);
        m.put(AirChange.class, Measure.AIR_CHANGE);
        return m;
    }

    private static Map<Class<?>, Function<String, Object>> texts() {
        Map<Class<?>, Function<String, Object>> t = new LinkedHashMap<>();
        MEASURES.forEach((type, measure) -> t.put(type, measure::read));
        t.put(String.class, Values::text);
        t.put(Distance.class, Values::distance);
        t.put(Leg.class, Values::leg);
        t.put(FittingAllowance.class, Values::allowance);
        t.put(GaugeReading.class, Values::gauge);
        t.put(LocalDate.class, Values::date);
        t.put(LocalTime.class, s -> moment(s, LocalTime::parse, "a time of day, such as 19:00"));
        t.put(MonthDay.class, s -> moment(s, m -> MonthDay.parse("--" + m), "a month and day, such as 01-31"));
        return t;
    }

    /**
     * The value a node stands for.
     *
     * @throws NotAQuantity with what to write instead
     */
    static Object read(Class<?> type, JsonNode node) {
        if (type == Boolean.class) {
            if (!node.isBoolean()) {
                throw new NotAQuantity(shown(node) + " is neither true nor false: write true or false without quotes,"
                        + " or leave the entry out when nobody knows");
            }
            return node.booleanValue();
        }
        if (type == Double.class || type == Integer.class) {
            return number(type, node);
        }
        if (type.isEnum()) {
            return constant(type, node);
        }
        Function<String, Object> reader = TEXTS.get(type);
        if (reader == null) {
            throw new IllegalStateException("nothing reads a " + type.getSimpleName());
        }
        if (node.isNumber()) {
            return reader.apply(node.asText());
        }
        if (!node.isTextual()) {
            throw new NotAQuantity(shown(node) + " stands where a text is needed: write " + example(type));
        }
        return reader.apply(node.textValue());
    }

    /** Whether values of the type are written as one text. */
    static boolean isText(Class<?> type) {
        return TEXTS.containsKey(type);
    }

    /** Whether "none" is one of the type's own values rather than a known absence. */
    static boolean hasOwnNone(Class<?> type) {
        return type == FittingAllowance.class
                || type.isEnum() && findConstant(type, "none").isPresent();
    }

    /** What a field whose value is a text holds, in a few words with an example. */
    static String example(Class<?> type) {
        Measure<?> measure = MEASURES.get(type);
        if (measure != null) {
            return "a " + measure.name() + " with its unit ("
                    + measure.units().stream().map(u -> u.name()).collect(Collectors.joining(", ")) + ")";
        }
        return switch (type.getSimpleName()) {
            case "Distance" -> "a distance with its unit, such as 14 ft, or > 25 ft when it is only known to be more";
            case "Leg" -> "a leg, such as north 12 ft, or 12 ft";
            case "FittingAllowance" -> "none, counted, or a share such as 20 %";
            case "GaugeReading" -> "a share such as 62 %, or a cylinder's weight of propane such as 40 lb";
            case "LocalDate" -> "a date, such as 2026-10-01";
            case "LocalTime" -> "a time of day, such as 19:00";
            case "MonthDay" -> "a month and day, such as 01-31";
            default -> "a text";
        };
    }

    static String names(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(c -> ((Named) c).written())
                .collect(Collectors.joining(", "));
    }

    /** What stands there is no bare number. */
    static final class NotANumber extends NotAQuantity {

        private static final long serialVersionUID = 1L;

        private NotANumber(String advice) {
            super(advice);
        }
    }

    private static Object number(Class<?> type, JsonNode node) {
        if (!node.isNumber()) {
            throw new NotANumber(
                    shown(node) + " stands where a bare number is needed: write a number without quotes and unit");
        }
        double value = node.doubleValue();
        if (!(value >= 0 && value <= GREATEST_BARE_NUMBER)) {
            throw new NotAQuantity(shown(node) + " is not a number a house can have here: write a number from 0 up");
        }
        if (type == Integer.class) {
            if (value != Math.rint(value) || value > 10_000) {
                throw new NotAQuantity(shown(node) + " is not a count: write a whole number from 0 to 10,000");
            }
            return (int) value;
        }
        return value;
    }

    private static Object constant(Class<?> type, JsonNode node) {
        Optional<Object> found = node.isTextual() ? findConstant(type, node.textValue()) : Optional.empty();
        return found.orElseThrow(
                () -> new NotAQuantity(shown(node) + " is not among the choices: write one of " + names(type)));
    }

    private static Optional<Object> findConstant(Class<?> type, String written) {
        String wanted = written.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(type.getEnumConstants())
                .filter(c -> ((Named) c).written().toLowerCase(Locale.ROOT).equals(wanted))
                .map(c -> (Object) c)
                .findFirst();
    }

    private static String text(String s) {
        if (s.length() > 20_000) {
            throw new NotAQuantity("a text of " + s.length() + " characters is too long: write it shorter");
        }
        return s;
    }

    private static Distance distance(String s) {
        String t = s.strip();
        boolean more = t.startsWith(">");
        return new Distance(Measure.LENGTH.read(more ? t.substring(1) : t), more);
    }

    private static Leg leg(String s) {
        String t = s.strip();
        for (Direction d : Direction.values()) {
            if (t.regionMatches(true, 0, d.name(), 0, d.name().length())) {
                return new Leg(
                        Optional.of(d), Measure.LENGTH.read(t.substring(d.name().length())), s);
            }
        }
        if (!t.isEmpty() && Character.isLetter(t.charAt(0))) {
            throw new NotAQuantity("\"" + shortened(t) + "\" starts with no direction of a leg: write north, east,"
                    + " south, west, up or down and a length, such as north 12 ft");
        }
        return new Leg(Optional.empty(), Measure.LENGTH.read(t), s);
    }

    private static FittingAllowance allowance(String s) {
        String t = s.strip().toLowerCase(Locale.ROOT);
        if (t.equals("none")) {
            return new FittingAllowance.None();
        }
        if (t.equals("counted")) {
            return new FittingAllowance.Counted();
        }
        if (!t.contains("%")) {
            throw new NotAQuantity("\"" + shortened(s)
                    + "\" is not a fitting allowance: write none, counted, or a share" + " such as 20 %");
        }
        return new FittingAllowance.Share(Measure.RATIO.read(t));
    }

    private static GaugeReading gauge(String s) {
        if (!s.contains("%") && s.toLowerCase(Locale.ROOT).matches(".*(lb|kg)\\s*")) {
            return new GaugeReading.Weight(Measure.MASS.read(s));
        }
        Ratio share = Measure.RATIO.read(s);
        if (share.fraction() > 1) {
            throw new NotAQuantity("\"" + shortened(s) + "\" is more than a full tank: write 0 to 100 %");
        }
        return new GaugeReading.Share(share);
    }

    /** Year first and nothing else; the advice knows what people write, and says so where it could be two days. */
    private static LocalDate date(String s) {
        LocalDate date;
        boolean asAPlan = true;
        try {
            date = LocalDate.parse(s.strip());
        } catch (DateTimeException e) {
            date = Typed.readDate(s);
            asAPlan = false;
        }
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new NotAQuantity("\"" + shortened(s) + "\" is too far off: write a date from " + FIRST_YEAR + " to "
                    + LAST_YEAR + ", such as 2026-10-01");
        }
        if (!asAPlan) {
            throw new NotAQuantity("\"" + shortened(s) + "\" is not written as a plan writes a date: write " + date);
        }
        return date;
    }

    private static Object moment(String s, Function<String, Object> parse, String wanted) {
        try {
            return parse.apply(s.strip());
        } catch (DateTimeException e) {
            throw new NotAQuantity("\"" + shortened(s) + "\" can't be taken: write " + wanted);
        }
    }

    static String shown(JsonNode node) {
        return shortened(node.toString());
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
