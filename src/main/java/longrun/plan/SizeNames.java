package longrun.plan;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longrun.plan.choice.Material;
import longrun.quantity.NotAQuantity;

/**
 * The sizes each material is made in, smallest first, and how a person may write them. Copper is named by nominal size
 * or by outside diameter, and a bare number would be either, so it is refused with both.
 *
 * <p>Source of the names: column heads of 2018 IFGC Tables 402.4(25) to 402.4(37).
 */
public final class SizeNames {

    private static final Map<String, String> COPPER_OD = copperOd();
    private static final Map<Material, List<String>> STANDARD = Map.of(
            Material.STEEL, List.of("1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4"),
            Material.COPPER, List.copyOf(COPPER_OD.keySet()),
            Material.CSST, List.of("13", "15", "18", "19", "23", "25", "30", "31", "37", "39", "46", "48", "60", "62"),
            Material.PE_PIPE, List.of("1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "3", "4"),
            Material.PE_TUBING, List.of("1/2 CTS", "1 CTS"));

    private SizeNames() {}

    private static Map<String, String> copperOd() {
        Map<String, String> od = new LinkedHashMap<>();
        od.put("1/4", "3/8");
        od.put("3/8", "1/2");
        od.put("1/2", "5/8");
        od.put("5/8", "3/4");
        od.put("3/4", "7/8");
        od.put("1", "1-1/8");
        od.put("1-1/4", "1-3/8");
        od.put("1-1/2", "1-5/8");
        od.put("2", "2-1/8");
        return od;
    }

    /** The sizes of the code's tables, smallest first. */
    public static List<String> standard(Material material) {
        return STANDARD.getOrDefault(material, List.of());
    }

    /** The outside diameter of a copper size named nominally, in inches. */
    public static String copperOutsideDiameter(String nominal) {
        String od = COPPER_OD.get(nominal);
        if (od == null) {
            throw new IllegalArgumentException("no copper size " + nominal);
        }
        return od;
    }

    /** As a person reads it: copper both ways, CSST with its EHD, the rest in inches. */
    public static String shown(Material material, String size) {
        return switch (material) {
            case COPPER -> size + " nominal (" + copperOutsideDiameter(size) + " OD)";
            case CSST -> "EHD " + size;
            case PE_TUBING -> size;
            case STEEL, PE_PIPE -> size + " in.";
        };
    }

    /**
     * The table's name for a size a person wrote.
     *
     * @param own further sizes, from a table the person loaded
     * @throws NotAQuantity with what to write instead
     */
    public static String read(Material material, String written, Collection<String> own) {
        String text = written.strip().replaceAll("\\s+", " ");
        String lower = text.toLowerCase(Locale.ROOT);
        if (material == Material.COPPER) {
            return copper(text, lower);
        }
        String plain = lower.replaceFirst("\\s*(in\\.?|\")$", "").replaceFirst("^ehd\\s*", "");
        for (String size : standard(material)) {
            if (size.toLowerCase(Locale.ROOT).equals(plain)) {
                return size;
            }
        }
        if (own.contains(plain)) {
            return plain;
        }
        throw new NotAQuantity("\"" + shortened(text) + "\" is not a size of " + material.label() + ": write one of "
                + String.join(", ", standard(material)));
    }

    private static String copper(String text, String lower) {
        if (lower.endsWith(" nominal")) {
            String nominal =
                    lower.substring(0, lower.length() - " nominal".length()).strip();
            if (COPPER_OD.containsKey(nominal)) {
                return nominal;
            }
        } else if (lower.endsWith(" od")) {
            String od = lower.substring(0, lower.length() - " od".length()).strip();
            for (Map.Entry<String, String> e : COPPER_OD.entrySet()) {
                if (e.getValue().equals(od)) {
                    return e.getKey();
                }
            }
        } else {
            String bare = lower.replaceFirst("\\s*(in\\.?|\")$", "");
            throw new NotAQuantity("\"" + shortened(text) + "\" is named two ways in copper: write \"" + shortened(bare)
                    + " nominal\" or \"" + shortened(bare) + " OD\"");
        }
        throw new NotAQuantity("\"" + shortened(text) + "\" is not a copper size: write one of "
                + String.join(" nominal, ", COPPER_OD.keySet()) + " nominal, or an OD of "
                + String.join(", ", COPPER_OD.values()));
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
