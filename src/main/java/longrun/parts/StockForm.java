package longrun.parts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Material;

/**
 * How a material is bought (common practice; {@code data/parts/stock.csv}).
 *
 * @param form length, coil or reel
 * @param lengthsFt the straight lengths it comes in, the usual first; none where it is cut from a coil
 * @param wasteShare added to what is measured, 0.1 is a tenth
 */
public record StockForm(String form, List<Double> lengthsFt, double wasteShare) {

    private static final Map<Material, StockForm> ALL = read();

    public StockForm {
        lengthsFt = List.copyOf(lengthsFt);
    }

    public static StockForm of(Material material) {
        StockForm form = ALL.get(material);
        if (form == null) {
            throw new IllegalStateException("parts/stock.csv: no row for " + material.written());
        }
        return form;
    }

    private static Map<Material, StockForm> read() {
        Map<Material, StockForm> out = new EnumMap<>(Material.class);
        for (DataRow row : DataFile.read("parts/stock.csv").rows()) {
            Material material = row.choice("material", Material.class);
            StockForm before = out.get(material);
            List<Double> lengths = new ArrayList<>(before == null ? List.of() : before.lengthsFt());
            row.findNumber("stock_ft").ifPresent(lengths::add);
            out.put(material, new StockForm(row.text("form"), lengths, row.number("waste_percent") / 100));
        }
        return out;
    }
}
