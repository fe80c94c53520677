package longrun.ui.fill;

import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FuelUse;
import longrun.draft.fill.PastFillEntries;
import longrun.draft.fill.TankChoice;
import longrun.fuel.StartingClimate;

/** What a person does, made a change of the page's draft. */
final class FillEdits implements FillActions {

    private final FillView page;

    FillEdits(FillView page) {
        this.page = page;
    }

    @Override
    public void typed(FillEntry entry, String text) {
        page.took(page.draft().typed(entry, text, page.units(), page.today()), entry.name());
    }

    @Override
    public void typedMonth(int month, String text) {
        page.took(page.draft().typedMonth(month, text, page.units()), "MONTH " + month);
    }

    @Override
    public void typed(int line, FuelUse.Column column, String text) {
        page.standIn(line);
        page.took(page.draft().typed(line, column, text, page.units()), "BURNS " + line + " " + column);
    }

    @Override
    public void chose(int line, FuelUse.Basis how) {
        page.standIn(line);
        page.change(page.draft().with(line, how));
    }

    @Override
    public void removedLine(int line) {
        page.standIn(line - 1);
        page.change(page.draft().withoutLine(line));
    }

    @Override
    public void inHand(int line) {
        page.goneInto(line);
    }

    @Override
    public void typedPast(int fill, PastFillEntries.Column column, String text) {
        page.took(page.draft().typedPast(fill, column, text, page.units()), "PAST " + fill + " " + column);
    }

    @Override
    public void removedPast(int fill) {
        page.change(page.draft().withoutPast(fill));
    }

    @Override
    public void pastedFills(String text) {
        int before = page.draft().past().size();
        page.change(page.draft().pasted(text, page.units()));
        int came = page.draft().past().size() - before;
        page.acts()
                .say(
                        came == 0
                                ? "Nothing in what was pasted looked like a date and gallons; nothing was changed."
                                : came + (came == 1 ? " fill was" : " fills were")
                                        + " taken from what was pasted; undo takes them back.");
    }

    @Override
    public void chose(TankChoice tank) {
        page.change(page.draft().with(tank));
    }

    @Override
    public void lies(boolean buried) {
        page.change(page.draft().buried(buried));
    }

    @Override
    public void chose(StartingClimate climate) {
        page.change(page.draft().with(climate));
    }
}
