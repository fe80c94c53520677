package longrun.ui.fill;

import longrun.draft.fill.Burns;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.PastEntries;
import longrun.draft.fill.TankChoice;
import longrun.fuel.StartingClimate;

/** What a person does on the page. */
interface Hand {
    void typed(FillEntry entry, String text);

    void typedMonth(int month, String text);

    void typed(int line, Burns.Column column, String text);

    void chose(int line, Burns.How how);

    void removedLine(int line);

    void inHand(int line);

    void typedPast(int fill, PastEntries.Column column, String text);

    void removedPast(int fill);

    void pastedFills(String text);

    void chose(TankChoice tank);

    void lies(boolean buried);

    void chose(StartingClimate climate);
}
