package longrun.ui.fill;

import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FuelUse;
import longrun.draft.fill.PastFillEntries;
import longrun.draft.fill.TankChoice;
import longrun.fuel.StartingClimate;

/** What a person does on the page. */
interface FillActions {
    void typed(FillEntry entry, String text);

    void typedMonth(int month, String text);

    void typed(int line, FuelUse.Column column, String text);

    void chose(int line, FuelUse.Basis how);

    void removedLine(int line);

    void inHand(int line);

    void typedPast(int fill, PastFillEntries.Column column, String text);

    void removedPast(int fill);

    void pastedFills(String text);

    void chose(TankChoice tank);

    void lies(boolean buried);

    void chose(StartingClimate climate);
}
