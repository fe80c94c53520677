package longrun.ui.start;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;
import longrun.store.ListedHouse;
import longrun.store.NotStored;
import longrun.store.StoreStartup;
import longrun.ui.frame.Dom;
import longrun.ui.frame.DraftKeeper;
import longrun.ui.frame.Frame;
import longrun.words.UnitSystem;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** The houses kept on this computer. */
@Route("houses")
@PageTitle("Houses \u00b7 Longrun")
@StyleSheet("context://frontend/run.css")
@StyleSheet("context://frontend/house.css")
public final class HousesView extends Frame implements BeforeEnterObserver, DraftKeeper.Listener {

    private static final DateTimeFormatter COPY = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

    private final transient HouseShelf shelf;
    private final transient StoreStartup startup;
    private final Element list = Dom.el("ul", "houses");
    private final Element none = Dom.text("p", "lede", "No house is kept yet.");
    private final Element unread = Dom.el("p", "notice").setAttribute("role", "alert");
    private final Element said = Dom.text("p", "s said-list", "").setAttribute("role", "status");
    private final Element saveAll = does("act", "Save all houses", this::saveAll);
    private final Element kept = Dom.text("p", "lede kept-where", "");
    private final DraftKeeper keeper = new DraftKeeper("longrun-houses", this);
    private final Element gone = Dom.el("ul", "houses");
    private final Element goneSays = Dom.text("summary", "", "");
    private final Element deleted = Dom.el("details", "more", goneSays, gone);
    private final transient Deque<Long> broughtBack = new ArrayDeque<>();
    private final transient HouseLines lines;

    public HousesView(HouseShelf shelf, StoreStartup startup) {
        super("Houses", "fuel gas code, 2018");
        this.shelf = shelf;
        this.startup = startup;
        lines = new HouseLines(shelf, this);
        noAnswer();
        work().appendChild(
                        Dom.el(
                                "section",
                                "",
                                Dom.text("h2", "place", "Houses"),
                                Dom.text(
                                        "p",
                                        "lede",
                                        "Kept on this computer, key by key. A PDF saved under Papers holds its house too, and"
                                                + " opens here like a plan file."),
                                unread,
                                none,
                                list,
                                said,
                                Dom.el(
                                        "div",
                                        "acts",
                                        does("act main", "Begin a new house", () -> go(shelf.begin())),
                                        does("act", "Open a plan file or a zip of them", keeper::openZipsToo),
                                        saveAll,
                                        does("act", "Show the demo house", () -> go(shelf.demo()))),
                                kept,
                                deleted),
                        keeper.getElement());
        onUndo(() -> orSaid(this::undo), () -> orSaid(this::redo));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        refresh();
    }

    /** A button that does something with the store, or says why it was not done. */
    Element does(String classes, String says, Runnable what) {
        Element button = Dom.button(classes, says);
        button.addEventListener("click", e -> orSaid(what));
        return button;
    }

    /** Does it, or says why the store did not. */
    void orSaid(Runnable what) {
        try {
            what.run();
        } catch (DataAccessException | TransactionException e) {
            say("That was not done: " + NotStored.why(e) + ", then try again.");
        }
    }

    private static void go(long id) {
        UI.getCurrent().navigate("house/" + id + "/house");
    }

    void refresh() {
        List<ListedHouse> houses;
        List<ListedHouse> away;
        try {
            houses = shelf.list();
            away = shelf.listDeleted();
        } catch (DataAccessException | TransactionException e) {
            unread.removeAllChildren();
            unread.appendChild(
                    Dom.words("The houses cannot be read at the moment: " + NotStored.why(e) + ". "),
                    does("ask", "Try again", this::refresh));
            Dom.show(unread, true);
            Dom.show(none, false);
            return;
        }
        Dom.show(unread, false);
        list.removeAllChildren();
        Dom.show(saveAll, !houses.isEmpty());
        Dom.retext(kept, keptWhere());
        Dom.show(none, houses.isEmpty());
        Dom.show(list, !houses.isEmpty());
        houses.forEach(h -> list.appendChild(lines.of(h)));
        gone.removeAllChildren();
        away.forEach(h -> gone.appendChild(lines.ofGone(h)));
        Dom.retext(goneSays, "Deleted houses: " + away.size());
        Dom.show(deleted, !away.isEmpty());
        canUndo(!away.isEmpty(), !broughtBack.isEmpty());
    }

    private String keptWhere() {
        String copy = startup.lastCopy()
                .map(c -> " The last copy of all of them was made on " + COPY.format(c.made()) + ".")
                .orElse("");
        String trouble = startup.copyTrouble().isEmpty() ? "" : " " + startup.copyTrouble();
        return "Houses are kept in the folder " + startup.folder() + "." + copy + trouble;
    }

    void delete(ListedHouse house) {
        if (shelf.delete(house.id())) {
            broughtBack.clear();
            say(HouseLines.name(house) + " was deleted; undo brings it back.");
        } else {
            say("The house was deleted already.");
        }
    }

    private void undo() {
        shelf.listDeleted().stream().findFirst().ifPresent(this::bringBack);
    }

    void bringBack(ListedHouse house) {
        if (shelf.bringBack(house.id())) {
            broughtBack.push(house.id());
            say(HouseLines.name(house) + " is back.");
        } else {
            say(HouseLines.name(house) + " is back already.");
        }
    }

    private void redo() {
        if (!broughtBack.isEmpty()) {
            long id = broughtBack.element();
            shelf.delete(id);
            broughtBack.pop();
            say("The house was deleted; undo brings it back.");
        }
    }

    void say(String words) {
        Dom.retext(said, words);
        refresh();
    }

    @Override
    public void kept(String text, Map<String, String> unsent, Optional<UnitSystem> units) {
        // The list keeps nothing in the browser.
    }

    @Override
    public void keptElsewhere(String text) {
        refresh();
    }

    @Override
    public void opened(String name, String text, boolean tooLong) {
        if (tooLong) {
            say(name + " was not opened: it is over 1 MiB, and no plan is.");
            return;
        }
        orSaid(() -> {
            try {
                go(shelf.open(text));
            } catch (NotAPlan e) {
                say(name + " was not opened: " + e.getMessage() + ".");
            }
        });
    }

    @Override
    public void openedZip(String name, String base64, boolean tooLong) {
        if (tooLong) {
            say(name + " was not opened: it is over 8 MiB.");
            return;
        }
        orSaid(() -> {
            try {
                byte[] bytes = Base64.getDecoder().decode(base64);
                if (name.toLowerCase(Locale.ROOT).endsWith(".pdf")) {
                    go(shelf.openPdf(bytes));
                    return;
                }
                HouseShelf.Opened opened = shelf.openZip(bytes);
                String houses =
                        opened.houses() == 1 ? "One house was opened." : opened.houses() + " houses were opened.";
                say(houses + (opened.refused().isEmpty() ? "" : " " + String.join("; ", opened.refused()) + "."));
            } catch (NotAPlan | IllegalArgumentException e) {
                say(name + " was not opened: " + e.getMessage() + ".");
            }
        });
    }

    void savePlanFile(ListedHouse house) {
        shelf.planFile(house.id())
                .ifPresentOrElse(
                        file -> {
                            keeper.download(file.name(), file.text());
                            say(file.name() + " is saved where the browser keeps what it loads.");
                        },
                        () -> say("The house was deleted in another tab."));
    }

    private void saveAll() {
        List<PlanFiles.PlanFile> files = shelf.planFiles();
        keeper.downloadZip(
                "houses-" + LocalDate.now(ZoneId.systemDefault()) + ".zip",
                Base64.getEncoder().encodeToString(PlanFiles.zip(files)));
        say((files.size() == 1 ? "One house is" : files.size() + " houses are")
                + " saved in one zip, where the browser keeps what it loads.");
    }
}
