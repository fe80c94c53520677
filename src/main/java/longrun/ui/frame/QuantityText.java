package longrun.ui.frame;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.quantity.Unit;

/**
 * What is typed in a quantity field and what is stored of it. A bare number is stored with the unit of its field;
 * anything else is stored as typed.
 *
 * @param <Q> the quantity
 * @param measure how it is read
 * @param unit that a bare number has
 * @param shown how it is shown with its unit
 */
public record QuantityText<Q extends Quantity>(Measure<Q> measure, Unit unit, Function<Q, String> shown) {

    private static final Pattern BARE = Pattern.compile("\\s*-?[0-9.][0-9.,/\\- ]*");

    /** What the plan holds for what was typed. */
    public String stored(String typed) {
        return BARE.matcher(typed).matches() ? typed.strip() + " " + unit.name() : typed;
    }

    /** What stands in the field for what the plan holds. */
    public String inField(String stored) {
        String end = " " + unit.name();
        if (stored.endsWith(end)) {
            String bare = stored.substring(0, stored.length() - end.length());
            return BARE.matcher(bare).matches() ? bare : stored;
        }
        return stored;
    }

    /** Tells at the entry what was understood, or what is wrong; empty when nothing is typed. */
    public Optional<Q> tell(Entry entry, String stored, String name) {
        if (stored.isBlank()) {
            entry.understood("");
            return Optional.empty();
        }
        try {
            Q read = measure.read(stored);
            entry.understood(name + " " + shown.apply(read));
            return Optional.of(read);
        } catch (NotAQuantity e) {
            entry.wrong(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }
}
