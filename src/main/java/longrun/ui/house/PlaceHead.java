package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.ui.frame.Dom;

/** What stands over a place: its name, what it is for, and in the demo house what to look at. */
final class PlaceHead {

    private final Element heading = Dom.text("h2", "place", "");
    private final Element lede = Dom.text("p", "lede", "");
    private final DemoWalk walk = new DemoWalk();
    private final Element element = Dom.el(
            "section",
            "place-head",
            heading,
            lede,
            Dom.el(
                    "p",
                    "keys-of-facts",
                    Dom.words("In an empty field type "),
                    Dom.text("span", "nb", "? for not known,"),
                    Dom.words(" "),
                    Dom.text("span", "nb", "- for none;"),
                    Dom.words(" a figure typed later takes its place.")));

    Element element() {
        return element;
    }

    DemoWalk walk() {
        return walk;
    }

    void show(HouseSession session, PlaceKind here) {
        Dom.retext(heading, here.title());
        Dom.retext(
                lede,
                PlaceStatus.isStarted(session, here) ? here.lede() : (here.lede() + " " + here.beginning()).strip());
        walk.show(session, here);
    }
}
