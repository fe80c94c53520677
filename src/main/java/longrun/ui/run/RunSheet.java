package longrun.ui.run;

import longrun.draft.NotAPlan;
import longrun.draft.entry.Entered;
import longrun.draft.run.RunDraft;
import longrun.draft.run.RunFile;
import longrun.ui.frame.PageActs;

/** A run as a whole. */
record RunSheet() implements PageActs.Sheet<RunDraft> {

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
    public Entered plan(RunDraft draft) {
        return draft.whole();
    }
}
