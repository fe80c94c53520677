package longrun.ui.fill;

import java.time.LocalDate;
import java.util.function.Supplier;
import longrun.draft.NotAPlan;
import longrun.draft.entry.DraftValue;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillFile;
import longrun.ui.frame.PageActions;

/**
 * How long a fill lasts, as a whole.
 *
 * @param today the day the demo begins at
 */
record FillSheet(Supplier<LocalDate> today) implements PageActions.Content<FillDraft> {

    @Override
    public String noun() {
        return "page";
    }

    @Override
    public String demoName() {
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
    public DraftValue plan(FillDraft draft) {
        return draft.whole();
    }
}
