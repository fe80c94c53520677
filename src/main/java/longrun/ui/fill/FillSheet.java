package longrun.ui.fill;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillFile;
import longrun.draft.run.BecomesHouse;
import longrun.store.NotStored;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Keeper;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** What is done with the page as a whole: the demo, an empty one, its plan file, a house made of it. */
final class FillSheet {

    private final FillView page;
    private final BecomesHouse houses;
    private final Keeper keeper;
    private final Element said =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");

    FillSheet(FillView page, BecomesHouse houses, Keeper keeper) {
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
        Element empty = act("Begin an empty page", () -> {
            page.replace(FillDraft.empty());
            say("An empty page; undo brings back what was here.");
        });
        Element open = act("Open a plan file", keeper::open);
        Element save = act("Save the plan file", () -> {
            keeper.download("fill.longrun.json", FillFile.write(page.draft()));
            say("The plan file fill.longrun.json went to the browser\u2019s downloads.");
        });
        return Dom.el("div", "acts", demo("act"), empty, open, save, act("Make it a house", this::makeHouse));
    }

    void makeHouse() {
        try {
            UI.getCurrent().navigate("house/" + houses.keep(page.draft().plan()) + "/house");
        } catch (DataAccessException | TransactionException e) {
            say("No house was made: " + NotStored.why(e) + ". The page is as it was.");
        }
    }

    /** A button that shows the demo. */
    Element demo(String css) {
        return act(css, "Show the demo", () -> {
            page.replace(FillDraft.demo(page.today()));
            say("The demo is shown; undo brings back what was here.");
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

    /** A file, or what another window kept; one this page cannot show changes nothing. */
    void opened(String name, String text, boolean tooLong) {
        if (tooLong) {
            say(name + " was not opened: it is over 1 MiB, and no plan is. Nothing here was changed.");
            return;
        }
        try {
            page.replace(FillFile.read(text));
            say(name + " is open; undo brings back what was here.");
        } catch (FillFile.NotAFill e) {
            say(name + " was not opened: " + e.getMessage() + ". Nothing here was changed.");
        }
    }
}
