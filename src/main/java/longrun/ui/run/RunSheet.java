package longrun.ui.run;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import longrun.draft.run.BecomesHouse;
import longrun.draft.run.RunDraft;
import longrun.draft.run.RunFile;
import longrun.store.NotStored;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Keeper;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** What is done with a run as a whole: the demo, an empty one, its plan file, a house made of it. */
final class RunSheet {

    private final RunView page;
    private final BecomesHouse houses;
    private final Keeper keeper;
    private final Element said =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");

    RunSheet(RunView page, BecomesHouse houses, Keeper keeper) {
        this.page = page;
        this.houses = houses;
        this.keeper = keeper;
    }

    /** What came of the last act. */
    Element said() {
        return said;
    }

    void say(String words) {
        Dom.retext(said, words);
    }

    Element acts() {
        Element empty = act("Begin an empty run", () -> {
            page.replace(RunDraft.empty());
            say("An empty run; undo brings back what was here.");
        });
        Element open = act("Open a plan file", keeper::open);
        Element save = act("Save the plan file", () -> {
            keeper.download("run.longrun.json", RunFile.write(page.draft()));
            say("The plan file run.longrun.json went to the browser\u2019s downloads.");
        });
        Element house = act("Make a house of this run", this::makeHouse);
        return Dom.el("div", "acts", demo("act"), empty, open, save, house);
    }

    private void makeHouse() {
        try {
            UI.getCurrent().navigate("house/" + houses.keep(page.draft().plan()) + "/house");
        } catch (DataAccessException | TransactionException e) {
            say("No house was made: " + NotStored.why(e) + ". The run is as it was.");
        }
    }

    /** A button that shows the demo run. */
    Element demo(String css) {
        return act(css, "Show the demo run", () -> {
            page.replace(RunDraft.demo());
            say("The demo run is shown; undo brings back what was here.");
        });
    }

    private static Element act(String says, Runnable does) {
        return act("act", says, does);
    }

    private static Element act(String css, String says, Runnable does) {
        Element b = Dom.button(css, says);
        b.addEventListener("click", e -> does.run());
        return b;
    }

    /** A file, or what another window kept; one that is no run changes nothing. */
    void opened(String name, String text, boolean tooLong) {
        if (tooLong) {
            say(name + " was not opened: it is over 1 MiB, and no plan is. Nothing here was changed.");
            return;
        }
        try {
            page.replace(RunFile.read(text));
            say(name + " is open; undo brings back what was here.");
        } catch (RunFile.NotARun e) {
            say(name + " was not opened: " + e.getMessage() + ". Nothing here was changed.");
        }
    }
}
