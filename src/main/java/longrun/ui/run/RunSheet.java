package longrun.ui.run;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import longrun.draft.run.RunDraft;
import longrun.draft.run.RunFile;
import longrun.ui.frame.PageActs;

/** A run as its page's acts see it. */
record RunSheet(RunView view) implements PageActs.Page {

    @Override
    public String called() {
        return "run";
    }

    @Override
    public String demoCalled() {
        return "demo run";
    }

    @Override
    public String makeHouse() {
        return "Make a house of this run";
    }

    @Override
    public String fileName() {
        return "run.longrun.json";
    }

    @Override
    public String file() {
        return RunFile.write(view.draft());
    }

    @Override
    public ObjectNode plan() {
        return view.draft().plan();
    }

    @Override
    public void showEmpty() {
        view.replace(RunDraft.empty());
    }

    @Override
    public void showDemo() {
        view.replace(RunDraft.demo());
    }

    @Override
    public Optional<String> read(String text) {
        try {
            view.replace(RunFile.read(text));
            return Optional.empty();
        } catch (RunFile.NotARun e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
