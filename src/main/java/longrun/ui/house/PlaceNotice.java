package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.util.stream.Collectors;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.ui.frame.Dom;
import longrun.words.Notice;

/** What a person should know once, in the place where it matters. */
final class PlaceNotice {

    private final Element element = Dom.text("p", "told", "");

    Element element() {
        return element;
    }

    void show(HouseSession session, PlaceKind here) {
        String words = session.review()
                .map(r -> Notice.of(r.plan()).stream()
                        .filter(n -> n.place().equals(here.slug()))
                        .map(Notice::text)
                        .collect(Collectors.joining(" ")))
                .orElse("");
        Dom.retext(element, words);
        Dom.show(element, !words.isEmpty());
    }
}
