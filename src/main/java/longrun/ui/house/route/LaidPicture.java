package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.drawing.part.PassageDrawing;
import longrun.drawing.part.TrenchDrawing;
import longrun.plan.Section;
import longrun.plan.choice.Setting;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The selected section as it lies in its trench, and each wall it passes, with what is entered. */
final class LaidPicture {

    private final HousePage desk;
    private final Element element = Dom.el("div", "laid-pictures");
    private List<String> shown = List.of();

    LaidPicture(HousePage desk) {
        this.desk = desk;
    }

    Element element() {
        return element;
    }

    /** @param index of the selected section */
    void show(int index) {
        String id = desk.session().text("/sections/" + index + "/id");
        Optional<Section> section = desk.session()
                .review()
                .flatMap(r -> r.plan().sections().stream()
                        .filter(s -> s.id().equals(id))
                        .findFirst());
        List<String> now = section.map(LaidPicture::drawings).orElse(List.of());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        element.removeAllChildren();
        now.forEach(svg -> element.appendChild(Dom.drawing(svg)));
    }

    private static List<String> drawings(Section s) {
        List<String> out = new ArrayList<>();
        if (s.setting().is(v -> v == Setting.UNDERGROUND)) {
            out.add(TrenchDrawing.of(s));
        }
        s.passes().findValue().orElse(List.of()).forEach(p -> out.add(PassageDrawing.of(s.id(), p)));
        return out;
    }
}
