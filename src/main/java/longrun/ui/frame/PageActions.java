package longrun.ui.frame;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;
import longrun.draft.entry.DraftValue;
import longrun.draft.run.HouseMaker;
import longrun.store.NotStored;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/**
 * The actions of a page as a whole: show the demo, begin an empty draft, open and save a plan file, make a house.
 *
 * @param <D> the draft
 */
public final class PageActions<D> {

    /**
     * The kind of draft on a page: its names, its examples and its files.
     *
     * @param <D> the draft
     */
    public interface Content<D> {

        /** What it is called, such as "run". */
        String noun();

        /** What the demo is called, such as "demo run". */
        String demoName();

        /** The label of the button that makes a house of it. */
        String makeHouse();

        /** The name of its plan file. */
        String fileName();

        /** An empty draft. */
        D empty();

        /** The demo. */
        D demo();

        /**
         * The draft in a plan file or as kept in the browser.
         *
         * @throws NotAPlan where the text is no such draft; the message says why
         */
        D read(String text) throws NotAPlan;

        /** The text of its plan file. */
        String file(D draft);

        /** The text to keep in the browser. */
        String kept(D draft);

        /** Its plan, to make a house of. */
        DraftValue plan(D draft);
    }

    private final Content<D> sheet;
    private final Supplier<D> now;
    private final Consumer<D> show;
    private final HouseMaker houses;
    private final DraftKeeper keeper;
    private final Element openHouse;
    private Optional<DraftValue> wholeHouse = Optional.empty();
    private final Element said =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");

    /**
     * The actions of one page.
     *
     * @param now gives the draft shown
     * @param show shows another draft in its place
     */
    PageActions(Content<D> sheet, Supplier<D> now, Consumer<D> show, HouseMaker houses, DraftKeeper keeper) {
        this.sheet = sheet;
        this.now = now;
        this.show = show;
        this.houses = houses;
        this.keeper = keeper;
        openHouse = act("act main", "Open it as a whole house", () -> wholeHouse.ifPresent(this::makeHouse));
        Dom.show(openHouse, false);
    }

    /** The message on the result of the last action. */
    public Element said() {
        return said;
    }

    /** Shows a message. */
    public void say(String words) {
        Dom.retext(said, words);
    }

    /** The buttons. */
    public Element acts() {
        Element empty = act("act", "Begin an empty " + sheet.noun(), () -> {
            show.accept(sheet.empty());
            say("An empty " + sheet.noun() + "; undo brings back what was here.");
        });
        Element open = act("act", "Open a plan file", keeper::open);
        Element save = act("act", "Save the plan file", () -> {
            keeper.download(sheet.fileName(), sheet.file(now.get()));
            say("The plan file " + sheet.fileName() + " went to the browser\u2019s downloads.");
        });
        return Dom.el(
                "div",
                "acts",
                demo("act"),
                empty,
                open,
                save,
                act("act", sheet.makeHouse(), this::makeHouse),
                openHouse);
    }

    /** Makes a house of the draft and opens it. */
    public void makeHouse() {
        makeHouse(sheet.plan(now.get()));
    }

    private void makeHouse(DraftValue plan) {
        try {
            UI.getCurrent().navigate("house/" + houses.store(plan) + "/house");
        } catch (DataAccessException | TransactionException e) {
            say("No house was made: " + NotStored.why(e) + ". The " + sheet.noun() + " is as it was.");
        }
    }

    /** A button that shows the demo. */
    public Element demo(String css) {
        return act(css, "Show the " + sheet.demoName(), () -> {
            show.accept(sheet.demo());
            say("The " + sheet.demoName() + " is shown; undo brings back what was here.");
        });
    }

    private static Element act(String css, String says, Runnable does) {
        Element b = Dom.button(css, says);
        b.addEventListener("click", e -> does.run());
        return b;
    }

    /** Opens a plan file, or what another window has kept; where this page cannot show it, nothing changes and a house is offered. */
    public void opened(String name, String text, boolean tooLong) {
        Optional<String> refused = tooLong ? Optional.of("it is over 1 MiB, and no plan is") : refused(text);
        wholeHouse = refused.isPresent() && !tooLong ? plan(text) : Optional.empty();
        Dom.show(openHouse, wholeHouse.isPresent());
        say(refused.map(why -> name + " was not opened: " + why + ". Nothing here was changed.")
                .orElse(name + " is open; undo brings back what was here."));
    }

    /** Shows the draft in a plan file; the reason where it holds none of this kind. */
    private Optional<String> refused(String text) {
        try {
            show.accept(sheet.read(text));
            return Optional.empty();
        } catch (NotAPlan e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static Optional<DraftValue> plan(String text) {
        try {
            return Optional.of(PlanFiles.read(text));
        } catch (NotAPlan e) {
            return Optional.empty();
        }
    }
}
