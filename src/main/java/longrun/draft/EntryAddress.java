package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.MonthlyMeans;
import longrun.plan.NominalSize;
import longrun.quantity.Typed;

/**
 * Where an entry stands in the draft, and what is typed there; written as {@code data-at} on its field, so that what was
 * typed while the program did not answer finds its place. The draft holds what a plan may hold; what cannot be put so is
 * kept as typed.
 *
 * @param pointer where it stands
 * @param unit name of the unit a bare number has, or one of the kinds named here; empty for words
 */
public record EntryAddress(String pointer, String unit) {

    public static final String DATE = "date";
    public static final String DAY_OF_YEAR = "day-of-year";
    public static final String NUMBER = "number";
    public static final String PRICE = "price";
    public static final String SIZE = "size";

    /** As written on the field. */
    public String written() {
        return unit.isEmpty() ? pointer : pointer + " " + unit;
    }

    public static Optional<EntryAddress> of(String written) {
        if (!written.startsWith("/")) {
            return Optional.empty();
        }
        int blank = written.indexOf(' ');
        return Optional.of(
                blank < 0
                        ? new EntryAddress(written, "")
                        : new EntryAddress(written.substring(0, blank), written.substring(blank + 1)));
    }

    /** The text of what the draft holds for what was typed. */
    public String stored(String typed) {
        return node(typed).asText();
    }

    private JsonNode node(String typed) {
        return switch (unit) {
            case "" -> TextNode.valueOf(typed);
            case DATE -> TextNode.valueOf(Typed.date(typed));
            case DAY_OF_YEAR -> TextNode.valueOf(Typed.dayOfYear(typed));
            case SIZE -> TextNode.valueOf(NominalSize.typed(typed));
            case NUMBER ->
                Typed.number(typed).<JsonNode>map(DecimalNode::valueOf).orElse(TextNode.valueOf(typed));
            case PRICE -> Typed.price(typed).<JsonNode>map(DecimalNode::valueOf).orElse(TextNode.valueOf(typed));
            default -> TextNode.valueOf(Typed.quantity(typed, unit));
        };
    }

    /**
     * A key in the field: the draft takes its text as it stands now; blank takes the entry away. A month's mean stands with
     * the other eleven.
     */
    public void type(HouseSession session, String typed) {
        session.type(pointer, d -> {
            OptionalInt month = MonthlyMeans.month(pointer);
            if (month.isPresent()) {
                MonthlyMeans.write(d, month.getAsInt(), typed.isBlank() ? "" : stored(typed));
            } else if (typed.isBlank()) {
                d.remove(pointer);
            } else {
                DraftTree.put(d.root(), pointer, node(typed));
            }
        });
    }

    /** What stands in the field for what the draft holds. */
    public String inField(String stored) {
        return unit.isEmpty() ? stored : Typed.inField(stored, unit);
    }

    /** Whether what stands in a field is what the draft holds, however it is written: then it is left as it is. */
    public boolean stands(String inField, String stored) {
        return !inField.isBlank() && stored(inField).equals(stored);
    }
}
