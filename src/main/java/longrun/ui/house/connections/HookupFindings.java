package longrun.ui.house.connections;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.draft.hookup.HookupParts;
import longrun.drawing.part.HookupDrawing;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Appliance.Part;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.HouseFinding;
import longrun.ui.place.HousePage;

/** What is found of one appliance's parts: a wrong order drawn beside the right one, and the rest at the part it is about. */
final class HookupFindings {

    private static final Set<String> ORDER_RULES =
            Set.of("shutoff-upstream-of-connector", "trap-downstream-of-shutoff", "trap-before-connector");

    private final HousePage desk;
    private final HookupParts parts;
    private final Runnable putRight;
    private final Element order = Dom.el("div", "order");
    private final Element others = Dom.el("div", "finds");
    private List<Finding> own = List.of();
    private List<Finding> outOfOrder = List.of();
    private String shown = "";

    HookupFindings(HousePage desk, HookupParts parts, Runnable putRight) {
        this.desk = desk;
        this.parts = parts;
        this.putRight = putRight;
    }

    /** The wrong order, explained, with the right one beside it. */
    Element order() {
        return order;
    }

    /** What is about the whole connection. */
    Element others() {
        return others;
    }

    /** Takes up what the last review found. */
    void read() {
        String at = parts.pointer();
        own = desk.session().findings().stream()
                .filter(f -> f.field().equals(at) || f.field().startsWith(at + "/"))
                .toList();
        outOfOrder = own.stream()
                .filter(f -> ORDER_RULES.contains(f.rule()) && f.ask().isEmpty())
                .toList();
    }

    /** The parts that stand out of order. */
    Set<Integer> outOfOrder(int count) {
        return outOfOrder.stream()
                .map(this::part)
                .filter(i -> i >= 0 && i < count)
                .collect(Collectors.toSet());
    }

    /** What is found at one part, its order apart. */
    List<Finding> at(int index) {
        return own.stream()
                .filter(f -> part(f) == index && !outOfOrder.contains(f))
                .toList();
    }

    static boolean mustFix(List<Finding> here) {
        return here.stream().anyMatch(f -> f.severity() == Severity.MUST_FIX);
    }

    void show(List<Part> list, List<Integer> right) {
        List<Finding> whole =
                own.stream().filter(f -> !outOfOrder.contains(f) && part(f) < 0).toList();
        String key = outOfOrder + "" + whole + right;
        if (key.equals(shown)) {
            return;
        }
        shown = key;
        others.removeAllChildren();
        whole.forEach(f -> others.appendChild(HouseFinding.of(f, desk)));
        order.removeAllChildren();
        outOfOrder.forEach(f -> order.appendChild(wrongOrder(f, list, right)));
    }

    private Element wrongOrder(Finding f, List<Part> list, List<Integer> right) {
        Element mend = Dom.button("act main", "Put the parts in the right order");
        mend.addEventListener("click", e -> putRight.run());
        String drawn =
                HookupDrawing.small(parts.name(), right.stream().map(list::get).toList());
        return Dom.el(
                "div",
                "mend",
                Dom.el("div", "", HouseFinding.of(f, desk), Dom.el("p", "acts", mend)),
                Dom.el("figure", "", Dom.text("figcaption", "", "In the right order"), Dom.drawing(drawn)));
    }

    /** The part a finding stands at; -1 where it is about the whole connection. */
    private int part(Finding f) {
        String at = parts.pointer();
        if (!f.field().startsWith(at + "/")) {
            return -1;
        }
        String rest = f.field().substring(at.length() + 1);
        int slash = rest.indexOf('/');
        String index = slash < 0 ? rest : rest.substring(0, slash);
        return index.matches("[0-9]{1,6}") ? Integer.parseInt(index) : -1;
    }
}
