package longrun.ui.house;

import longrun.plan.NominalSize;
import longrun.quantity.NotAQuantity;

/** The nominal size of a valve or a connector; beside it the size it was understood as. */
final class SizeField extends LineField {

    SizeField(HouseDesk desk, String pointer, String label, String help) {
        super(desk, new EntryAddress(pointer, EntryAddress.SIZE), label, help);
    }

    @Override
    String understood(String stored) {
        try {
            return NominalSize.read(stored).isPresent() ? NominalSize.typed(stored) + " in." : stored;
        } catch (NotAQuantity e) {
            return stored;
        }
    }
}
