package longrun.fuel;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import longrun.tank.Propane;

/**
 * A second way to tank and year of a house of {@link longrun.tank.RandomTanks}, from the document alone: the trade's rule
 * for vapour, the degree days of Erbs and others (1983) in their other form, every use added up month by month. Slow and
 * plain on purpose; of the program it takes only propane's pressure by temperature, which has its own published figures.
 */
final class TankAndYearByHand {

    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    /** K by percent full, as the trade holds it (memory); a row at 0 for a tank run dry. */
    private static final double[][] K = {{0, 0}, {10, 45}, {20, 60}, {30, 70}, {40, 80}, {50, 90}, {60, 100}};

    private final JsonNode plan;

    TankAndYearByHand(JsonNode plan) {
        this.plan = plan;
    }

    private static double number(JsonNode node) {
        return Double.parseDouble(node.asText().replaceAll(" .*", ""));
    }

    private double number(String at, double absent) {
        JsonNode node = plan.at(at);
        return node.isMissingNode() ? absent : number(node);
    }

    private double count() {
        return number("/tank/count", 1);
    }

    double usableGal() {
        double share = 80 - number("/tank/refillAt", 0);
        return count() * number("/tank/waterCapacity", 0) * share / 100;
    }

    double nowGal() {
        return count() * number("/tank/waterCapacity", 0) * number("/tank/gauge", 0) / 100;
    }

    double refillGal() {
        return count() * number("/tank/waterCapacity", 0) * number("/tank/refillAt", 0) / 100;
    }

    /** Share of the shell's circumference below the liquid: the angle whose segment has the area, found by halving. */
    private static double wetted(double percent) {
        double low = 0;
        double high = 2 * Math.PI;
        for (int i = 0; i < 100; i++) {
            double angle = (low + high) / 2;
            if ((angle - Math.sin(angle)) / (2 * Math.PI) < percent / 100) {
                low = angle;
            } else {
                high = angle;
            }
        }
        return low / (2 * Math.PI);
    }

    private static double k(double percent) {
        double w = wetted(percent);
        int row = 1;
        while (row < K.length - 1 && K[row][0] < percent) {
            row++;
        }
        double from = wetted(K[row - 1][0]);
        double to = wetted(K[row][0]);
        return K[row - 1][1] + (K[row][1] - K[row - 1][1]) * (w - from) / (to - from);
    }

    /** At the refill gauge and the design temperature, liquid down to -20 degF. */
    double mostBtuh() {
        double air = number("/site/winterDesignTemp", 0);
        double m = air >= 20 ? 2 : air <= -20 ? 0 : (air + 20) / 20;
        return count() * number("/tank/diameter", 0) * number("/tank/length", 0) * k(number("/tank/refillAt", 0)) * m;
    }

    /** The same while the tank keeps 20 psig at the sea. */
    double plannedBtuh() {
        double air = number("/site/winterDesignTemp", 0);
        double liquid = Propane.degF(20);
        return air <= liquid ? 0 : mostBtuh() * (air - liquid) / (air + 20);
    }

    double everythingBtuh() {
        double sum = 0;
        for (JsonNode a : plan.at("/appliances")) {
            sum += number(a.path("input"));
        }
        return sum;
    }

    private double inputOf(String id) {
        for (JsonNode a : plan.at("/appliances")) {
            if (a.path("id").asText().equals(id)) {
                return number(a.path("input"));
            }
        }
        throw new IllegalStateException(id);
    }

    private double btuPerGal() {
        return number("/use/heatingValue", 91_502);
    }

    /** Gallons of a month, January 0. */
    double gallons(int month) {
        double sum = 0;
        for (JsonNode h : plan.at("/use/heating")) {
            double perDegree = number(h.path("designLoad"))
                    / (number("/use/indoorTemp", 68) - number("/site/winterDesignTemp", 0))
                    / (number(h.path("efficiency")) / 100);
            double base = h.has("balanceTemp") ? number(h.path("balanceTemp")) : 65;
            sum += 24 * perDegree * degreeDays(month, base) / btuPerGal();
        }
        for (JsonNode o : plan.at("/use/others")) {
            sum += DAYS[month] * otherADay(o, month);
        }
        return sum;
    }

    private double otherADay(JsonNode o, int month) {
        int days = 0;
        boolean burns = !o.has("months");
        for (int m = 0; m < 12; m++) {
            boolean in = !o.has("months");
            for (JsonNode n : o.path("months")) {
                in |= n.asInt() == m + 1;
            }
            days += in ? DAYS[m] : 0;
            burns |= in && m == month;
        }
        if (!burns) {
            return 0;
        }
        if (o.has("volumePerYear")) {
            return number(o.path("volumePerYear")) / days;
        }
        double share = o.has("load") ? number(o.path("load")) / 100 : 1;
        return o.path("hoursPerDay").asDouble() * inputOf(o.path("appliance").asText()) * share / btuPerGal();
    }

    /** s N^1.5 (h / 2 + ln(e^-ah + e^ah) / 2a), a = 1.698, in degC-days; the program has it with the constant 0.2041. */
    private double degreeDays(int month, double baseF) {
        double[] c = new double[12];
        double mean = 0;
        for (int m = 0; m < 12; m++) {
            c[m] = (number(plan.at("/site/monthlyMeanTemp").path(m)) - 32) / 1.8;
            mean += c[m] / 12;
        }
        double square = 0;
        for (double t : c) {
            square += (t - mean) * (t - mean) / 12;
        }
        double s = Math.max(0.1, 1.45 - 0.0290 * c[month] + 0.0664 * Math.sqrt(square));
        double n = DAYS[month];
        double h = ((baseF - 32) / 1.8 - c[month]) / (s * Math.sqrt(n));
        double a = 1.698;
        double days = s * Math.pow(n, 1.5) * (h / 2 + Math.log(Math.exp(-a * h) + Math.exp(a * h)) / (2 * a));
        return 1.8 * Math.max(0, days);
    }

    /** The day the level stands at the refill gauge, walked day by day for ten years; the last day of February stands in for the 29th. */
    Optional<LocalDate> refillDay(List<Double> daily) {
        LocalDate date = LocalDate.parse(plan.at("/tank/gaugeDate").asText());
        double level = nowGal();
        for (int walked = 0; level > refillGal(); walked++) {
            if (walked == 3650) {
                return Optional.empty();
            }
            LocalDate common = date.getMonthValue() == 2 && date.getDayOfMonth() == 29
                    ? LocalDate.of(2027, 2, 28)
                    : date.withYear(2027);
            level -= daily.get(common.getDayOfYear() - 1);
            if (level > refillGal()) {
                date = date.plusDays(1);
            }
        }
        return Optional.of(date);
    }
}
