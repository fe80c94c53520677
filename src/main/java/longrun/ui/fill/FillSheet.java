package longrun.ui.fill;

import java.time.LocalDate;
import java.util.function.Supplier;
import longrun.draft.NotAPlan;
import longrun.draft.entry.Entered;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillFile;
import longrun.ui.frame.PageActs;

/**
 * How long a fill lasts, as a whole.
 *
 * @param today the day the demo begins at
 */
record FillSheet(Supplier<LocalDate> today) implements PageActs.Sheet<FillDraft> {

    @Override
    public String called() {
        return "page";
    }

    @Override
    public String demoCalled() {
        return "demo";
    }

    @Override
    public String makeHouse() {
        return "Make it a house";
    }

    @Override
    public String fileName() {
        return "fill.longrun.json";
    }

    @Override
    public FillDraft empty() {
        return FillDraft.empty();
    }

    @Override
    public FillDraft demo() {
        return FillDraft.demo(today.get());
    }

    @Override
    public FillDraft read(String text) throws NotAPlan {
        return FillFile.read(text);
    }

    @Override
    public String file(FillDraft draft) {
        return FillFile.write(draft);
    }

    @Override
    public String kept(FillDraft draft) {
        return draft.kept();
    }

    @Override
    public Entered plan(FillDraft draft) {
        return draft.whole();
    }
}
