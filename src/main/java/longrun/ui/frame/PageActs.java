package longrun.ui.frame;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;
import longrun.draft.entry.Entered;
import longrun.draft.run.HouseMaker;
import longrun.store.NotStored;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/**
 * What is done with a page of its own as a whole: the demo, an empty one, its plan file, a house made of it.
 *
 * @param <D> what is typed on the page
 */
public final class PageActs<D> {

    /**
     * What stands on the page as a whole, and how the page calls it.
     *
     * @param <D> what is typed on the page
     */
    public interface Sheet<D> {

        /** Such as "run". */
        String called();

        /** Such as "demo run". */
        String demoCalled();

        /** What the button says that makes a house of it. */
        String makeHouse();

        /** Name of its plan file. */
        String fileName();

        D empty();

        D demo();

        /** What a plan file holds, or what this browser has kept. */
        D read(String text) throws NotAPlan;

        /** The plan file's text. */
        String file(D draft);

        /** The text kept in this browser. */
        String kept(D draft);

        /** Its plan, for a house made of it. */
        Entered plan(D draft);
    }

    private final Sheet<D> sheet;
    private final Supplier<D> now;
    private final Consumer<D> show;
    private final HouseMaker houses;
    private final Keeper keeper;
    private final Element openHouse;
    private Optional<Entered> wholeHouse = Optional.empty();
    private final Element said =
            Dom.text("p", "s", "").setAttribute("role", "status").setAttribute("id", "file-said");

    /**
     * The acts of one sheet.
     *
     * @param now what stands on the page
     * @param show shows another in its place
     */
    PageActs(Sheet<D> sheet, Supplier<D> now, Consumer<D> show, HouseMaker houses, Keeper keeper) {
        this.sheet = sheet;
        this.now = now;
        this.show = show;
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
        Element empty = act("act", "Begin an empty " + sheet.called(), () -> {
            show.accept(sheet.empty());
            say("An empty " + sheet.called() + "; undo brings back what was here.");
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

    public void makeHouse() {
        makeHouse(sheet.plan(now.get()));
    }

    private void makeHouse(Entered plan) {
        try {
            UI.getCurrent().navigate("house/" + houses.keep(plan) + "/house");
        } catch (DataAccessException | TransactionException e) {
            say("No house was made: " + NotStored.why(e) + ". The " + sheet.called() + " is as it was.");
        }
    }

    /** A button that shows the demo. */
    public Element demo(String css) {
        return act(css, "Show the " + sheet.demoCalled(), () -> {
            show.accept(sheet.demo());
            say("The " + sheet.demoCalled() + " is shown; undo brings back what was here.");
        });
    }

    private static Element act(String css, String says, Runnable does) {
        Element b = Dom.button(css, says);
        b.addEventListener("click", e -> does.run());
        return b;
    }

    /** A file, or what another window kept; one this page cannot show changes nothing, and a plan may be a house. */
    public void opened(String name, String text, boolean tooLong) {
        Optional<String> refused = tooLong ? Optional.of("it is over 1 MiB, and no plan is") : refused(text);
        wholeHouse = refused.isPresent() && !tooLong ? plan(text) : Optional.empty();
        Dom.show(openHouse, wholeHouse.isPresent());
        say(refused.map(why -> name + " was not opened: " + why + ". Nothing here was changed.")
                .orElse(name + " is open; undo brings back what was here."));
    }

    /** Shows what a plan file holds; where it holds nothing of the kind, why. */
    private Optional<String> refused(String text) {
        try {
            show.accept(sheet.read(text));
            return Optional.empty();
        } catch (NotAPlan e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static Optional<Entered> plan(String text) {
        try {
            return Optional.of(PlanFiles.read(text));
        } catch (NotAPlan e) {
            return Optional.empty();
        }
    }
}
