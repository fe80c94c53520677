package longrun.ui.fill;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillFile;
import longrun.ui.frame.PageActs;

/** How long a fill lasts, as its page's acts see it. */
record FillSheet(FillView view) implements PageActs.Page {

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
    public String file() {
        return FillFile.write(view.draft());
    }

    @Override
    public ObjectNode plan() {
        return view.draft().plan();
    }

    @Override
    public void showEmpty() {
        view.replace(FillDraft.empty());
    }

    @Override
    public void showDemo() {
        view.replace(FillDraft.demo(view.today()));
    }

    @Override
    public Optional<String> read(String text) {
        try {
            view.replace(FillFile.read(text));
            return Optional.empty();
        } catch (FillFile.NotAFill e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
