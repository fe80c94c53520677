package longrun.ui.field;

import longrun.draft.EntryAddress;
import longrun.plan.json.PlanError;
import longrun.quantity.DayReading;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.ui.frame.DayChoice;
import longrun.ui.place.HousePage;

/**
 * A date, written year first, in numbers, or with the name of the month; beside it the day it was understood as. Where the
 * numbers may mean two days, both are offered, and the plan has no date until one is chosen.
 */
public final class DateField extends LineField {

    private final EntryAddress address;
    private final boolean everyYear;
    private final DayChoice which;

    private DateField(HousePage page, EntryAddress address, String label, String help) {
        super(page, address.pointer(), "date", label, help);
        this.address = address;
        everyYear = address.unit().equals(EntryAddress.DAY_OF_YEAR);
        which = new DayChoice(label, this::chosen);
        end(which.element());
    }

    /** A date with its year. */
    public DateField(HousePage page, String pointer, String label, String help) {
        this(page, new EntryAddress(pointer, EntryAddress.DATE), label, help);
    }

    /** A day of every year, such as Jan 10. */
    public static DateField everyYear(HousePage page, String pointer, String label, String help) {
        return new DateField(page, new EntryAddress(pointer, EntryAddress.DAY_OF_YEAR), label, help);
    }

    @Override
    EntryAddress address() {
        return address;
    }

    @Override
    public void show(boolean write) {
        super.show(write);
        boolean two = which.show(page().session().text(pointer()));
        if (two) {
            target().setAttribute("aria-keyshortcuts", "ArrowDown"); // moves to the two days at the end of the line
        } else {
            target().removeAttribute("aria-keyshortcuts");
        }
    }

    private void chosen(String day) {
        entry().orElseThrow().write(day);
        page().session().choose(pointer(), day);
        FieldList.focus(target());
    }

    @Override
    String understood(String stored) {
        if (everyYear) {
            return Typed.dayOfYearWords(stored);
        }
        try {
            return Typed.words(Typed.readDate(stored));
        } catch (NotAQuantity e) {
            return ""; // "none", or other text that a plan may hold here
        }
    }

    @Override
    String wrong(String stored, PlanError error) {
        if (everyYear && !DayReading.both(stored).isEmpty()) {
            return DayChoice.advice(stored);
        }
        if (everyYear) {
            return "\u201c" + stored + "\u201d is not a day of the year: write Jan 10, or 01-10 with the month first";
        }
        try {
            Typed.readDate(stored);
            return error.message();
        } catch (NotAQuantity e) {
            return e.advice();
        }
    }
}
