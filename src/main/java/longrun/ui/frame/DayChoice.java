package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import longrun.quantity.DayReading;

/** Lets a person choose between the two days that a date in numbers may mean; hidden while there is nothing to choose. */
public final class DayChoice {

    private final Consumer<String> chosen;
    private final Element element = Dom.el("div", "ans which").setAttribute("role", "group");
    private List<DayReading> offered = List.of();

    /** @param chosen receives the day chosen, as a plan stores it */
    public DayChoice(String label, Consumer<String> chosen) {
        this.chosen = chosen;
        element.setAttribute("aria-label", label + ": which day is meant");
        Dom.show(element, false);
    }

    /** The element that shows it. */
    public Element element() {
        return element;
    }

    /** The message about a date that may mean two days. */
    public static String advice(String typed) {
        return "\u201c" + typed.strip() + "\u201d may mean two days. Choose one; until then no day is entered:";
    }

    /** Offers both days that the text may mean, or nothing; returns whether there are two. */
    public boolean show(String typed) {
        List<DayReading> both = DayReading.both(typed);
        if (!both.equals(offered)) {
            offered = both;
            element.removeAllChildren();
            both.forEach(reading -> element.appendChild(choice(reading)));
            Dom.show(element, !both.isEmpty());
        }
        return !both.isEmpty();
    }

    private Element choice(DayReading reading) {
        Element button = Dom.button("", reading.words());
        button.addEventListener("click", e -> chosen.accept(reading.stored()));
        return button;
    }
}
