package longrun.parts;

import java.util.List;
import java.util.OptionalDouble;
import longrun.quantity.Show;

/**
 * One line of the list.
 *
 * @param group where it stands
 * @param item what it is, in trade words
 * @param size as a person reads it; blank where it has none or none is known
 * @param count how many, or how much of {@code unit}; empty where the plan cannot tell
 * @param unit blank for pieces
 * @param where ids of the sections, regulators or appliances it is for
 * @param basis how the count came about, or what is lacking
 */
public record PartLine(
        PartGroup group,
        String item,
        String size,
        OptionalDouble count,
        String unit,
        List<String> where,
        String basis) {

    public PartLine {
        where = List.copyOf(where);
    }

    static PartLine pieces(PartGroup group, String item, String size, int count, List<String> where, String basis) {
        return new PartLine(group, item, size, OptionalDouble.of(count), "", where, basis);
    }

    /** A line whose count the plan cannot tell. */
    static PartLine uncounted(PartGroup group, String item, String size, List<String> where, String basis) {
        return new PartLine(group, item, size, OptionalDouble.empty(), "", where, basis);
    }

    /** The count with its unit; empty where it is not known. */
    public String counted() {
        if (count.isEmpty()) {
            return "";
        }
        return Show.plain(count.getAsDouble()) + (unit.isEmpty() ? "" : " " + unit);
    }
}
