package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.sections.WholeRoute;
import longrun.finding.ListWords;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** Material, place and joints of the whole route, said once; beside each the sections that have another. */
final class WholeRouteBar {

    private static final int NAMED = 5;

    private final HousePage desk;
    private final Said material;
    private final Said setting;
    private final Said joints;
    private final Element element;

    /** One thing said of the whole route. */
    private final class Said {
        private final String entry;
        private final Map<String, String> words;
        private final Choice choice;
        private final Element but = Dom.text("span", "q s", "");
        private final Element box;

        Said(String entry, String label, Map<String, String> words) {
            this.entry = entry;
            this.words = words;
            choice = new Choice(
                    "all-" + entry,
                    label + " of the whole route",
                    v -> desk.session().change(d -> WholeRoute.set(d, entry, v)));
            box = Dom.el("div", "", Dom.el("label", "", Dom.words(label), choice.element()), but);
        }

        void show(WholeRoute route) {
            choice.show(words, route.common(entry));
            List<String> others = route.exceptions(entry);
            List<String> without = route.without(entry);
            Dom.retext(
                    but,
                    (others.isEmpty() ? "" : "other in " + names(others))
                            + (others.isEmpty() || without.isEmpty() ? "" : "; ")
                            + (without.isEmpty() ? "" : "not said of " + names(without)));
        }
    }

    WholeRouteBar(HousePage desk) {
        this.desk = desk;
        material = new Said(WholeRoute.MATERIAL, "Material", RouteTools.materials());
        setting = new Said(WholeRoute.SETTING, "Place", RouteTools.settings());
        Map<String, String> joined = new LinkedHashMap<>(Map.of("", "not said"));
        joined.putAll(SectionFacts.JOINTS);
        joints = new Said(WholeRoute.JOINTS, "Joined", joined);
        element = Dom.el(
                "section",
                "part whole-route",
                Dom.text("h3", "", "All sections"),
                Dom.el("div", "whole", material.box, setting.box, joints.box));
    }

    Element element() {
        return element;
    }

    Choice choice(String entry) {
        return switch (entry) {
            case WholeRoute.MATERIAL -> material.choice;
            case WholeRoute.SETTING -> setting.choice;
            default -> joints.choice;
        };
    }

    /** Shown from the second section on: of one section it is said in its line. */
    void show() {
        WholeRoute route = new WholeRoute(desk.session().draft());
        Dom.show(element, desk.session().at("/sections").size() > 1);
        material.show(route);
        setting.show(route);
        Dom.show(joints.box, route.asksJoints());
        joints.show(route);
    }

    private static String names(List<String> ids) {
        return ListWords.most(ids, NAMED);
    }
}
