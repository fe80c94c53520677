package longrun.ui.frame;

import java.util.Optional;
import java.util.function.Function;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.quantity.Typed;
import longrun.quantity.Unit;

/**
 * Converts between what is typed in a quantity field and what is stored. A bare number is stored with the unit of the field,
 * and a heat rate such as 199k as a plan writes it; anything else is stored as typed.
 *
 * @param <Q> the quantity
 * @param measure reads the quantity
 * @param unit the unit of a bare number
 * @param shown writes the quantity with its unit
 */
public record QuantityText<Q extends Quantity>(Measure<Q> measure, Unit unit, Function<Q, String> shown) {

    /** What is stored for what was typed. */
    public String stored(String typed) {
        return Typed.quantity(typed, unit.name());
    }

    /** What the field shows for what is stored. */
    public String inField(String stored) {
        return Typed.inField(stored, unit.name());
    }

    /** Writes what is stored into a field, unless the text there already means the same. */
    public void write(Entry entry, String stored) {
        if (entry.text().isBlank() || !stored(entry.text()).equals(stored)) {
            entry.write(inField(stored));
        }
    }

    /** Reads what is stored, and shows at the entry what was understood or what is wrong; empty where it is blank or wrong. */
    public Optional<Q> show(Entry entry, String stored, String name) {
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
