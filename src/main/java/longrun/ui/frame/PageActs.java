package longrun.ui.frame;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import longrun.draft.PlanFiles;
import longrun.draft.run.BecomesHouse;
import longrun.store.NotStored;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** What is done with a page of its own as a whole: the demo, an empty one, its plan file, a house made of it. */
public final class PageActs {

    /** The page, and how it calls what stands on it. */
    public interface Page {

        /** Such as "run". */
        String called();

        /** Such as "demo run". */
        String demoCalled();

        /** What the button says that makes a house of it. */
        String makeHouse();

        /** Name of its plan file. */
        String fileName();

        /** The plan file's text. */
        String file();

        /** Its plan, for a house made of it. */
        ObjectNode plan();

        void showEmpty();

        void showDemo();

        /** Shows what a plan file holds; where it holds nothing of the kind, why, and nothing is changed. */
        Optional<String> read(String text);
    }

    private final Page page;
    private final BecomesHouse houses;
    private final Keeper keeper;
    private final Element openHouse;
    private Optional<ObjectNode> wholeHouse = Optional.empty();
    private final Element said =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");

    public PageActs(Page page, BecomesHouse houses, Keeper keeper) {
        this.page = page;
        this.houses = houses;
        this.keeper = keeper;
        openHouse = act("act main", "Open it as a whole house", () -> wholeHouse.ifPresent(this::makeHouse));
        Dom.show(openHouse, false);
    }

    /** What came of the last act. */
    public Element said() {
        return said;
    }

    public void say(String words) {
        Dom.retext(said, words);
    }

    public Element acts() {
        Element empty = act("act", "Begin an empty " + page.called(), () -> {
            page.showEmpty();
            say("An empty " + page.called() + "; undo brings back what was here.");
        });
        Element open = act("act", "Open a plan file", keeper::open);
        Element save = act("act", "Save the plan file", () -> {
            keeper.download(page.fileName(), page.file());
            say("The plan file " + page.fileName() + " went to the browser\u2019s downloads.");
        });
        return Dom.el(
                "div",
                "acts",
                demo("act"),
                empty,
                open,
                save,
                act("act", page.makeHouse(), this::makeHouse),
                openHouse);
    }

    public void makeHouse() {
        makeHouse(page.plan());
    }

    private void makeHouse(ObjectNode plan) {
        try {
            UI.getCurrent().navigate("house/" + houses.keep(plan) + "/house");
        } catch (DataAccessException | TransactionException e) {
            say("No house was made: " + NotStored.why(e) + ". The " + page.called() + " is as it was.");
        }
    }

    /** A button that shows the demo. */
    public Element demo(String css) {
        return act(css, "Show the " + page.demoCalled(), () -> {
            page.showDemo();
            say("The " + page.demoCalled() + " is shown; undo brings back what was here.");
        });
    }

    private static Element act(String css, String says, Runnable does) {
        Element b = Dom.button(css, says);
        b.addEventListener("click", e -> does.run());
        return b;
    }

    /** A file, or what another window kept; one this page cannot show changes nothing, and a plan may be a house. */
    public void opened(String name, String text, boolean tooLong) {
        Optional<String> refused = tooLong ? Optional.of("it is over 1 MiB, and no plan is") : page.read(text);
        wholeHouse = refused.isPresent() && !tooLong ? PlanFiles.findPlan(text) : Optional.empty();
        Dom.show(openHouse, wholeHouse.isPresent());
        say(refused.map(why -> name + " was not opened: " + why + ". Nothing here was changed.")
                .orElse(name + " is open; undo brings back what was here."));
    }
}
