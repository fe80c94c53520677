package longrun.ui.frame;

import java.util.Optional;
import java.util.function.Function;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Quantity;
import longrun.quantity.Typed;
import longrun.quantity.Unit;

/**
 * What is typed in a quantity field and what is stored of it. A bare number is stored with the unit of its field,
 * and the ways people write a heat rate as a plan writes it; anything else is stored as typed.
 *
 * @param <Q> the quantity
 * @param measure how it is read
 * @param unit that a bare number has
 * @param shown how it is shown with its unit
 */
public record QuantityText<Q extends Quantity>(Measure<Q> measure, Unit unit, Function<Q, String> shown) {

    /** What the plan holds for what was typed. */
    public String stored(String typed) {
        return Typed.quantity(typed, unit.name());
    }

    /** What stands in the field for what the plan holds. */
    public String inField(String stored) {
        return Typed.inField(stored, unit.name());
    }

    /** Writes into a field what the plan holds, unless what stands there means just that. */
    public void write(Entry entry, String stored) {
        if (entry.text().isBlank() || !stored(entry.text()).equals(stored)) {
            entry.write(inField(stored));
        }
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
