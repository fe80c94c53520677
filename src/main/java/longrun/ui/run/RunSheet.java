package longrun.ui.run;

import longrun.draft.NotAPlan;
import longrun.draft.entry.DraftValue;
import longrun.draft.run.RunDraft;
import longrun.draft.run.RunFile;
import longrun.ui.frame.PageActions;

/** A run as a whole. */
record RunSheet() implements PageActions.Content<RunDraft> {

    @Override
    public String noun() {
        return "run";
    }

    @Override
    public String demoName() {
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
    public RunDraft empty() {
        return RunDraft.empty();
    }

    @Override
    public RunDraft demo() {
        return RunDraft.demo();
    }

    @Override
    public RunDraft read(String text) throws NotAPlan {
        return RunFile.read(text);
    }

    @Override
    public String file(RunDraft draft) {
        return RunFile.write(draft);
    }

    @Override
    public String kept(RunDraft draft) {
        return draft.kept();
    }

    @Override
    public DraftValue plan(RunDraft draft) {
        return draft.whole();
    }
}
