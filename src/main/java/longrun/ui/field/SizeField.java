package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.plan.NominalSize;
import longrun.quantity.NotAQuantity;
import longrun.ui.place.HousePage;

/** The nominal size of a valve or connector, with the size it was understood as. */
public final class SizeField extends LineField {

    public SizeField(HousePage page, String pointer, String label, String help) {
        super(page, pointer, "bare", label, help);
        end();
    }

    @Override
    EntryAddress address() {
        return new EntryAddress(pointer(), EntryAddress.SIZE);
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
