package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.EntryWords;
import longrun.draft.hookup.DrawnParts;
import longrun.draft.hookup.HookupParts;
import longrun.drawing.part.HookupDrawing;
import longrun.drawing.part.LineRegulatorDrawing;
import longrun.drawing.part.VentDrawing;
import longrun.finding.Finding;
import longrun.plan.Appliance.Part;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.HouseFinding;
import longrun.ui.place.HousePage;
import longrun.words.Sentence;

/**
 * On paper only: every appliance's connection, every regulator and the main shutoff one below the other, each drawn, with
 * the facts entered and what is found or asked, whichever is selected on the screen.
 */
final class ConnectionsSheet {

    private static final Set<String> REGULATOR_FACTS = Set.of(
            "setting",
            "shutoffBefore",
            "teeBefore",
            "teeAfter",
            "unionWithin",
            "vent",
            "access",
            "underEaves",
            "ventToOpening",
            "ventToIgnition",
            "ventToIntake",
            "ventToVentTerminal");

    private final HousePage desk;
    private final Element element = Dom.el("div", "paper-only all-connections");
    private final Map<String, Printed> printed = new LinkedHashMap<>();

    /** What is printed of one thing; drawn anew only where it changed. */
    private static final class Printed {
        private final Element element = Dom.el("section", "part");
        private String shown = "";
    }

    ConnectionsSheet(HousePage desk) {
        this.desk = desk;
    }

    Element element() {
        return element;
    }

    /**
     * @param all each thing's name, by its pointer
     * @param found what was found of each, by its pointer
     */
    void show(Map<String, String> all, Map<String, List<Finding>> found) {
        if (!List.copyOf(printed.keySet()).equals(List.copyOf(all.keySet()))) {
            printed.clear();
            all.keySet().forEach(p -> printed.put(p, new Printed()));
            element.removeAllChildren();
            printed.values().forEach(p -> element.appendChild(p.element));
        }
        printed.forEach((pointer, p) -> {
            List<Finding> own = found.getOrDefault(pointer, List.of());
            String name = all.getOrDefault(pointer, "");
            String now = name + desk.session().at(pointer) + own;
            if (!now.equals(p.shown)) {
                p.shown = now;
                Dom.fill(p.element, content(pointer, name, own).toArray(Element[]::new));
            }
        });
    }

    private List<Element> content(String pointer, String name, List<Finding> own) {
        List<Element> all = new ArrayList<>();
        all.add(Dom.text("h3", "", name));
        if (pointer.startsWith("/appliances/")) {
            hookup(pointer, all);
        } else if (pointer.startsWith("/regulators/")) {
            regulator(desk.session().at(pointer), all);
        } else {
            facts(desk.session().at(pointer), Set.of("outdoors", "reachable"), all);
        }
        own.forEach(f -> all.add(HouseFinding.onPaper(f, desk)));
        return all;
    }

    private void hookup(String pointer, List<Element> all) {
        HookupParts parts = new HookupParts(desk.session(), pointer);
        HookupFindings found = new HookupFindings(desk, parts, () -> {});
        found.read();
        List<Part> list = parts.list();
        if (!list.isEmpty()) {
            all.add(Dom.drawing(HookupDrawing.of(parts.name(), list, found.outOfOrder(list.size()), parts.right())));
        }
        DraftValue entry = parts.entry();
        if (!entry.isList()) {
            all.add(Dom.text("p", "lede", entry.isText() ? "You looked, and nothing is fitted." : "Not known yet."));
            return;
        }
        Element told = Dom.el("ol", "part-list");
        entry.forEach(part -> told.appendChild(Dom.text("li", "", words(part))));
        all.add(told);
    }

    private static void regulator(DraftValue r, List<Element> all) {
        boolean line = r.textOf("kind").equals("line");
        DrawnParts.regulator(r)
                .map(known -> line ? LineRegulatorDrawing.of(known) : VentDrawing.of(known))
                .ifPresent(svg -> all.add(Dom.drawing(svg)));
        facts(r, REGULATOR_FACTS, all);
    }

    private static void facts(DraftValue thing, Set<String> names, List<Element> all) {
        String words = thing.names().stream()
                .filter(names::contains)
                .flatMap(n -> EntryWords.listIn(n, thing.get(n)).stream())
                .collect(Collectors.joining("; "));
        all.add(Dom.text("p", "", words.isEmpty() ? "Nothing is entered yet." : Sentence.of(words)));
    }

    private static String words(DraftValue part) {
        return Sentence.of(String.join("; ", EntryWords.listIn("", part)));
    }
}
