package longrun.draft;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import longrun.plan.choice.ApplianceKind;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;

/**
 * An appliance in one line, as people write it: {@code furnace 80k}, {@code range 65,000 Btu/h}, {@code 199k tankless}.
 * The words are common practice; those that name two kinds ({@code water heater}) name none.
 *
 * @param kind what it is
 * @param input as a plan writes it; empty where none stands in the line
 */
public record ApplianceLine(ApplianceKind kind, String input) {

    private static final Map<String, ApplianceKind> WORDS = words();

    /**
     * Reads a line.
     *
     * @throws NotAQuantity saying what to write instead
     */
    public static ApplianceLine read(String typed) {
        String written = typed.strip().replaceAll("[\\s,:]+$", "");
        String line = written.toLowerCase(Locale.ROOT);
        String found = "";
        for (String words : WORDS.keySet()) {
            boolean there = line.equals(words) || line.startsWith(words + " ") || line.endsWith(" " + words);
            if (there && words.length() > found.length()) {
                found = words;
            }
        }
        ApplianceKind kind = WORDS.get(found);
        if (kind == null) {
            throw new NotAQuantity(
                    line.contains("heater")
                            ? "say which heater it is: on-demand water heater, storage water heater, space heater or pool"
                                    + " heater"
                            : "no appliance known here: choose one beside, or write one with its input, such as furnace 80k");
        }
        String rest = (line.startsWith(found)
                        ? written.substring(found.length())
                        : written.substring(0, written.length() - found.length()))
                .strip();
        if (rest.isEmpty()) {
            return new ApplianceLine(kind, "");
        }
        String input = Typed.quantity(rest, "Btu/h");
        Measure.HEAT_RATE.read(input);
        return new ApplianceLine(kind, input);
    }

    private static Map<String, ApplianceKind> words() {
        Map<String, ApplianceKind> out = new LinkedHashMap<>();
        for (ApplianceKind k : ApplianceKind.values()) {
            if (k != ApplianceKind.OTHER) {
                out.put(k.label(), k);
            }
        }
        out.put("on-demand heater", ApplianceKind.ON_DEMAND_WATER_HEATER);
        out.put("on-demand", ApplianceKind.ON_DEMAND_WATER_HEATER);
        out.put("tankless water heater", ApplianceKind.ON_DEMAND_WATER_HEATER);
        out.put("tankless heater", ApplianceKind.ON_DEMAND_WATER_HEATER);
        out.put("tankless", ApplianceKind.ON_DEMAND_WATER_HEATER);
        out.put("storage heater", ApplianceKind.STORAGE_WATER_HEATER);
        out.put("room heater", ApplianceKind.SPACE_HEATER);
        out.put("stove", ApplianceKind.RANGE);
        out.put("cook top", ApplianceKind.COOKTOP);
        out.put("dryer", ApplianceKind.CLOTHES_DRYER);
        out.put("logs", ApplianceKind.GAS_LOGS);
        out.put("grill", ApplianceKind.OUTDOOR_GRILL);
        out.put("generator", ApplianceKind.STANDBY_GENERATOR);
        out.put("fridge", ApplianceKind.REFRIGERATOR);
        return out;
    }
}
