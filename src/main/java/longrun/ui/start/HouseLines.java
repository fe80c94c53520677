package longrun.ui.start;

import com.vaadin.flow.dom.Element;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import longrun.store.ListedHouse;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.words.IsolatedName;

/** The lines of the list of houses: a house with what may be done with it, being named, or asked about before it goes. */
final class HouseLines {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm 'UTC'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);

    private final HouseShelf shelf;
    private final HousesView view;
    private long renaming = -1;
    private long deleting = -1;

    HouseLines(HouseShelf shelf, HousesView view) {
        this.shelf = shelf;
        this.view = view;
    }

    /** A house as it stands in the list now. */
    Element of(ListedHouse house) {
        return house.id() == renaming ? naming(house) : house.id() == deleting ? asking(house) : line(house);
    }

    /** A house that was deleted. */
    Element ofGone(ListedHouse house) {
        Element back = view.does("ask", "Bring it back", () -> view.bringBack(house));
        return Dom.el(
                "li",
                "",
                Dom.text("span", "", name(house)),
                when(house),
                Dom.el("div", "acts", named(back, "Bring back " + name(house))));
    }

    static String name(ListedHouse house) {
        return house.name().isBlank() ? "House without a name" : IsolatedName.of(house.name());
    }

    private Element line(ListedHouse house) {
        String name = name(house);
        Element link = Dom.text("a", "", name)
                .setAttribute("href", "house/" + house.id() + "/house")
                .setAttribute("router-link", true);
        Element acts = Dom.el(
                "div",
                "acts",
                named(
                        view.does("ask", "Rename", () -> {
                            renaming = house.id();
                            view.refresh();
                        }),
                        "Rename " + name),
                named(
                        view.does("ask", "Make a copy", () -> {
                            shelf.duplicate(house.id());
                            view.say("A copy of " + name + " was made.");
                        }),
                        "Make a copy of " + name),
                named(
                        view.does("ask", "Save the plan file", () -> view.savePlanFile(house)),
                        "Save the plan file of " + name),
                named(
                        view.does("ask", "Delete", () -> {
                            deleting = house.id();
                            renaming = -1;
                            view.refresh();
                        }),
                        "Delete " + name));
        return Dom.el("li", "", link, when(house), acts);
    }

    /** When it was changed, by the clock of whoever looks. */
    private static Element when(ListedHouse house) {
        Element when = Dom.text("span", "when", DAY.format(house.changed()));
        when.executeJs(
                "this.textContent = new Date($0).toLocaleString('en-GB', {day: 'numeric', month: 'long',"
                        + " year: 'numeric', hour: '2-digit', minute: '2-digit'})",
                house.changed().toString());
        return when;
    }

    private static Element named(Element button, String name) {
        return button.setAttribute("aria-label", name);
    }

    private Element naming(ListedHouse house) {
        String[] typed = {house.name()};
        Entry entry = new Entry("rename", "Name of the house", "in", text -> typed[0] = text);
        entry.write(house.name());
        Runnable take = () -> {
            boolean named = shelf.rename(house.id(), typed[0]);
            renaming = -1;
            view.say(
                    named
                            ? "The house has its new name."
                            : "The name was not changed: the house was changed in another tab. Try once more.");
        };
        entry.getElement().addEventListener("keydown", e -> view.orSaid(take)).setFilter("event.key == 'Enter'");
        entry.getElement()
                .addEventListener("keydown", e -> {
                    renaming = -1;
                    view.refresh();
                })
                .setFilter("event.key == 'Escape'");
        entry.getElement().executeJs("setTimeout(() => this.focus())");
        return Dom.el(
                "li",
                "",
                Dom.el("div", "", entry.getElement(), entry.said()),
                when(house),
                Dom.el(
                        "div",
                        "acts",
                        view.does("ask", "Take this name", take),
                        view.does("ask", "Leave it as it was", () -> {
                            renaming = -1;
                            view.refresh();
                        })));
    }

    /** Nothing is deleted by one key; the cursor is where it does no harm. */
    private Element asking(ListedHouse house) {
        String name = name(house);
        Runnable leave = () -> {
            deleting = -1;
            view.refresh();
        };
        Element keep = view.does("ask", "Keep it", leave);
        keep.addAttachListener(e -> keep.executeJs("setTimeout(() => this.focus())"));
        keep.addEventListener("keydown", e -> leave.run()).setFilter("event.key == 'Escape'");
        Element asks = Dom.text(
                "p", "", "Delete " + name + "? It leaves this list; it is kept below and can be brought back any day.");
        return Dom.el(
                "li",
                "",
                asks.setAttribute("role", "alert"),
                when(house),
                Dom.el(
                        "div",
                        "acts",
                        named(view.does("ask", "Delete it", () -> deleteNow(house)), "Delete " + name + " now"),
                        named(keep, "Keep " + name)));
    }

    private void deleteNow(ListedHouse house) {
        deleting = -1;
        view.delete(house);
    }
}
