package longrun.paper.calculation;

import java.util.List;
import longrun.origin.Origin;

/**
 * One step of the calculation.
 *
 * @param title its heading
 * @param quiet a word behind the heading
 * @param lines its figures, in the order they are redone
 */
record CalculationPart(String title, String quiet, List<Line> lines) {

    CalculationPart {
        lines = List.copyOf(lines);
    }

    /**
     * One figure.
     *
     * @param pointer where it stands in the review
     * @param at the section, regulator or appliance it belongs to; blank for the whole house
     * @param origin the figure with where it is from
     * @param values its numbers, where it is a list of them; else none
     */
    record Line(String pointer, String at, Origin origin, List<Double> values) {

        Line {
            values = List.copyOf(values);
        }

        Line(String pointer, String at, Origin origin) {
            this(pointer, at, origin, List.of());
        }

        /** Whether its numbers are those of the months, January first. */
        boolean isByMonth() {
            return values.size() == 12 && origin.value().matches("(-?[0-9.,]+ ){12}\\S+");
        }
    }

    /** Whether a figure of some part of the review stands here. */
    boolean holds(String pointer) {
        return lines.stream().anyMatch(l -> l.pointer().startsWith(pointer));
    }
}
