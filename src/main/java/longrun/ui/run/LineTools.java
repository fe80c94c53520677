package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.ui.frame.Dom;

/** Under the selected line: what it is made of, what it leaves, and the way to take it out. */
final class LineTools {

    private final Element material = Dom.el("select", "in");
    private final Element leaves = Dom.el("select", "in");
    private final Element remove = Dom.button("ask", "Remove this line");
    private final Element tools = Dom.el(
            "div",
            "tools",
            Dom.el("label", "", Dom.words("Material"), material),
            Dom.el("label", "", Dom.words("It leaves"), leaves),
            remove);
    private String leavesShown = "";
    private String materialShown = "";
    private Map<String, String> mayLeaveShown = Map.of();

    LineTools(int index, LineRow.Actions hand) {
        leaves.setAttribute("id", "leaves-" + index);
        leaves.addEventListener(
                        "change", e -> hand.leaves(index, e.getEventData().getString("element.value")))
                .addEventData("element.value");
        Map<String, String> pipes = new LinkedHashMap<>();
        Arrays.stream(Pipe.values()).forEach(p -> pipes.put(p.name(), p.title()));
        material.setAttribute("id", "material-" + index).setProperty("innerHTML", Dom.options(pipes));
        material.addEventListener(
                        "change",
                        e -> hand.isOf(index, Pipe.valueOf(e.getEventData().getString("element.value"))))
                .addEventData("element.value");
        remove.addEventListener("click", e -> hand.removed(index));
    }

    Element element() {
        return tools;
    }

    /** The line as it stands; of the next, which is not begun, there is nothing to choose. */
    void show(Optional<Line> line, Map<String, String> mayLeave) {
        Dom.show(leaves.getParent(), line.isPresent() && mayLeave.size() > 1);
        Dom.show(material.getParent(), line.isPresent());
        Dom.show(remove, line.isPresent());
        if (line.isEmpty()) {
            return;
        }
        Dom.retext(remove, "Remove line " + line.get().id());
        if (!mayLeave.equals(mayLeaveShown)) {
            mayLeaveShown = mayLeave;
            leaves.setProperty("innerHTML", Dom.options(mayLeave));
        }
        String from = line.get().from() + mayLeave.keySet();
        if (!from.equals(leavesShown)) {
            leavesShown = from;
            leaves.executeJs("this.value = $0", line.get().from());
        }
        String pipe = line.get().pipe().name();
        if (!pipe.equals(materialShown)) {
            materialShown = pipe;
            material.executeJs("this.value = $0", pipe);
        }
    }
}
