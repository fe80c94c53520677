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
 * The address of an entry in the draft, and the unit in which it is typed. Each field carries it as its attribute
 * {@code data-at}, so that what was typed while the program did not answer is stored in the right entry. What is typed is
 * stored as a plan writes it; what cannot be read is stored as typed.
 *
 * @param pointer JSON pointer of the entry
 * @param unit name of the unit of a number typed without one, or one of the constants of this class; empty for words
 */
public record EntryAddress(String pointer, String unit) {

    public static final String DATE = "date";
    public static final String DAY_OF_YEAR = "day-of-year";
    public static final String NUMBER = "number";
    public static final String PRICE = "price";
    public static final String SIZE = "size";

    /** The address as the field's attribute has it. */
    public String written() {
        return unit.isEmpty() ? pointer : pointer + " " + unit;
    }

    /** The address that a field's attribute holds; empty where it holds none. */
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

    /** What the draft stores for what was typed, as text. */
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
     * Stores the field's text after a key; a blank text removes the entry. The mean of a month is stored with the other
     * eleven.
     */
    public void type(HouseSession session, String typed) {
        session.type(pointer, d -> {
            OptionalInt month = MonthlyMeans.month(pointer);
            if (month.isPresent()) {
                MonthlyMeans.OF_HOUSE.write(d, month.getAsInt(), typed.isBlank() ? "" : stored(typed));
            } else if (typed.isBlank()) {
                d.remove(pointer);
            } else {
                DraftTree.put(d.root(), pointer, node(typed));
            }
        });
    }

    /** What the field shows for what the draft stores. */
    public String inField(String stored) {
        return unit.isEmpty() ? stored : Typed.inField(stored, unit);
    }

    /** Whether a field's text means what the draft stores, in whatever way it is written; then the text is left alone. */
    public boolean stands(String inField, String stored) {
        return !inField.isBlank() && stored(inField).equals(stored);
    }
}
