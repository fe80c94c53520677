package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.draft.hookup.AssumedRow;
import longrun.finding.Finding;
import longrun.plan.PlanPath;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import org.jspecify.annotations.Nullable;

/** Each appliance's last parts, the regulators and the main shutoff: one of them selected at a time. */
public final class ConnectionsPlace implements Place {

    private final HousePage desk;
    private final Element tabs =
            Dom.el("div", "tabs").setAttribute("role", "group").setAttribute("aria-label", "What is selected");
    private final Element holder = Dom.el("div", "");
    private final Element none = Dom.text(
            "p", "lede", "No appliance is entered yet. Enter them under Appliances; their connections are drawn here.");
    private final Element allAsUsual = Dom.button("act", "");
    private final Element allLine = Dom.el("p", "acts", allAsUsual);
    private final ConnectionsSheet sheet;
    private final Element element = Dom.el("div", "place-body", none, allLine, tabs, holder);
    private final Map<String, Tab> shown = new LinkedHashMap<>();
    private @Nullable PartsEditor bench;
    private String inHand = "";

    private record Tab(Element button, Element lack) {}

    public ConnectionsPlace(HousePage desk) {
        this.desk = desk;
        allAsUsual.addEventListener("click", e -> AssumedRow.takeAll(desk.session()));
        sheet = new ConnectionsSheet(desk);
        element.appendChild(sheet.element());
    }

    @Override
    public Element element() {
        return element;
    }

    /** Everything that can be selected, by its pointer. */
    private Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        int appliances = desk.session().at("/appliances").size();
        DraftAppliances names = DraftAppliances.of(desk.session().draft());
        for (int i = 0; i < appliances; i++) {
            all.put("/appliances/" + i, names.title(i));
        }
        DraftValue regulators = desk.session().at("/regulators");
        for (int i = 0; i < regulators.size(); i++) {
            String name = regulators.get(i).textOf("kind").replace('-', ' ');
            all.put(
                    "/regulators/" + i,
                    "Regulator " + regulators.get(i).textOf("id") + (name.isEmpty() ? "" : ", " + name));
        }
        all.put(MainShutoffEditor.AT, "Main shutoff");
        return all;
    }

    @Override
    public void show(boolean write) {
        Map<String, String> all = all();
        Dom.show(none, desk.session().at("/appliances").isEmpty());
        int without = AssumedRow.listWithout(desk.session()).size();
        Dom.retext(
                allAsUsual,
                "Take the usual parts at " + (without == 2 ? "both" : "all " + without)
                        + " appliances, assumed until seen");
        Dom.show(allLine, without > 1);
        if (!List.copyOf(all.keySet()).equals(List.copyOf(shown.keySet()))) {
            tabs.removeAllChildren();
            shown.clear();
            all.keySet().forEach(this::tab);
        }
        if (!all.containsKey(inHand)) {
            inHand = all.keySet().iterator().next();
        }
        boolean fresh = bench == null || !bench.pointer().equals(inHand);
        if (fresh) {
            bench = make(inHand);
            holder.removeAllChildren();
            holder.appendChild(bench.element());
        }
        Map<String, List<Finding>> found = new HashMap<>();
        for (Finding f : desk.session().findings()) {
            if (PlaceKind.CONNECTIONS.holds(f.field())) {
                found.computeIfAbsent(owner(f.field()), k -> new ArrayList<>()).add(f);
            }
        }
        List<String> wrong = desk.session().errors().keySet().stream()
                .filter(PlaceKind.CONNECTIONS::holds)
                .map(ConnectionsPlace::owner)
                .toList();
        all.forEach((pointer, name) -> tell(pointer, name, found.getOrDefault(pointer, List.of()), wrong));
        sheet.show(all, found);
        if (bench != null) {
            bench.show(write || fresh);
        }
    }

    private PartsEditor make(String pointer) {
        if (pointer.startsWith("/appliances/")) {
            return new HookupEditor(desk, pointer);
        }
        return pointer.startsWith("/regulators/") ? new RegulatorEditor(desk, pointer) : new MainShutoffEditor(desk);
    }

    private void tab(String pointer) {
        Element lack = Dom.text("small", "", "");
        Element button = Dom.el("button", "", Dom.text("span", "", ""), lack).setAttribute("type", "button");
        button.addEventListener("click", e -> take(pointer));
        tabs.appendChild(button);
        shown.put(pointer, new Tab(button, lack));
    }

    /** Selects an appliance, a regulator or the main shutoff. */
    void take(String pointer) {
        inHand = pointer;
        desk.session().endStep();
        show(true);
    }

    /** What may be selected that holds an entry: the appliance, the regulator, or the main shutoff. */
    private static String owner(String pointer) {
        PlanPath at = PlanPath.of(pointer);
        return at.length() > 1 ? "/" + at.step(0) + "/" + at.step(1) : pointer;
    }

    private void tell(String pointer, String name, List<Finding> own, List<String> wrongIn) {
        Tab tab = shown.get(pointer);
        if (tab == null) {
            return;
        }
        Dom.retext(tab.button().getChild(0), name);
        long wrong = wrongIn.stream().filter(pointer::equals).count();
        String none = desk.session().review().isPresent() ? "nothing missing" : "not known";
        PlaceStatus counted = PlaceStatus.counted(own, (int) wrong, begun(pointer) ? none : "");
        PlaceStatus lack = begun(pointer) ? counted : PlaceStatus.notStarted(counted);
        Dom.retext(tab.lack(), lack.words());
        Dom.setClass(tab.lack(), "must", lack.must());
        boolean on = pointer.equals(inHand);
        Dom.setClass(tab.button(), "on", on);
        tab.button().setAttribute("aria-pressed", String.valueOf(on));
    }

    private boolean begun(String pointer) {
        return pointer.startsWith("/appliances/")
                ? !desk.session().at(pointer + "/connection").isEmpty()
                : !desk.session().at(pointer).isEmpty();
    }

    @Override
    public void focus(String pointer) {
        all().keySet().stream()
                .filter(p -> pointer.equals(p) || pointer.startsWith(p + "/"))
                .findFirst()
                .ifPresent(this::take);
        if (bench == null) {
            return;
        }
        boolean wholePart = bench instanceof HookupEditor hookup && hookup.focusPart(pointer);
        if (!wholePart) {
            bench.fields().focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        return bench == null ? Map.of() : bench.fields().heard();
    }
}
