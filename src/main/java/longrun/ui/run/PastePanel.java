package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;
import longrun.draft.run.PastedLine;
import longrun.draft.run.Pipe;
import longrun.draft.run.RunNames;
import longrun.draft.run.RunPasteReader;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/** What a paste was understood as, shown before it is taken. */
final class PastePanel {

    private final Element panel =
            Dom.el("div", "paste").setAttribute("role", "region").setAttribute("aria-labelledby", "paste-h");
    private final Consumer<List<PastedLine>> taken;

    PastePanel(Consumer<List<PastedLine>> taken) {
        this.taken = taken;
        Dom.show(panel, false);
        panel.addEventListener("keydown", e -> close()).setFilter("event.key === 'Escape'");
    }

    Element element() {
        return panel;
    }

    boolean isOpen() {
        return !panel.hasAttribute("hidden");
    }

    void close() {
        Dom.show(panel, false);
        panel.removeAllChildren();
    }

    void show(RunPasteReader.Understood u, UnitSystem units, int firstLine) {
        panel.removeAllChildren();
        int n = u.lines().size();
        String count = n == 1 ? "1 line" : n + " lines";
        long unclear = u.lines().stream().filter(l -> !l.problems().isEmpty()).count();
        String doubt = unclear == 0
                ? ""
                : " " + unclear + (unclear == 1 ? " holds" : " hold")
                        + " an entry that is not understood; it is taken as written, to be mended.";
        Element take = Dom.button("act main", n == 1 ? "Take this line" : "Take these " + n + " lines");
        take.addEventListener("click", e -> {
            close();
            taken.accept(u.lines());
        });
        Element leave = Dom.button("act", "Leave them out");
        leave.addEventListener("click", e -> close());
        panel.appendChild(
                Dom.text("h3", "", "The paste is understood as " + count).setAttribute("id", "paste-h"),
                Dom.text("p", "s q", u.columns() + doubt));
        if (n > 0) {
            panel.appendChild(table(u.lines(), units, firstLine), Dom.el("div", "acts", take, leave));
        } else {
            panel.appendChild(Dom.el("div", "acts", leave));
        }
        Dom.show(panel, true);
        (n > 0 ? take : leave).executeJs("setTimeout(() => this.focus())");
    }

    private static Element table(List<PastedLine> lines, UnitSystem units, int firstLine) {
        Element body = Dom.el("tbody", "");
        for (int i = 0; i < lines.size(); i++) {
            PastedLine l = lines.get(i);
            body.appendChild(Dom.el(
                    "tr",
                    "",
                    Dom.text("td", "", RunNames.letter(firstLine + i)),
                    Dom.text("td", "tl", l.name()),
                    Dom.text("td", "tl", l.pipe().map(Pipe::brief).orElse("")),
                    length(l.length(), units),
                    heat(l.input(), units)));
            for (String problem : l.problems()) {
                body.appendChild(Dom.el("tr", "", Dom.text("td", "bad", problem).setAttribute("colspan", "5")));
            }
        }
        Element heads = Dom.el("tr", "");
        for (String head : List.of("Line", "What it feeds", "Material", "Length", "Input")) {
            heads.appendChild(Dom.text("th", "", head).setAttribute("scope", "col"));
        }
        heads.getChild(1).setAttribute("class", "tl");
        heads.getChild(2).setAttribute("class", "tl");
        return Dom.el("table", "", Dom.el("thead", "", heads), body);
    }

    private static Element length(String written, UnitSystem units) {
        try {
            Length l = Measure.LENGTH.read(written);
            return cell(units.length(l) + " " + units.lengthUnit().name(), written);
        } catch (NotAQuantity e) {
            return Dom.text("td", "bad", written);
        }
    }

    private static Element heat(String written, UnitSystem units) {
        try {
            HeatRate h = Measure.HEAT_RATE.read(written);
            return cell(units.heat(h) + " " + units.heatUnit().name(), written);
        } catch (NotAQuantity e) {
            return Dom.text("td", written.isEmpty() ? "q" : "bad", written.isEmpty() ? "branches" : written);
        }
    }

    private static Element cell(String understood, String written) {
        Element td = Dom.text("td", "", understood);
        if (!written.replace(",", "").equals(understood.replace(",", "").replace(".0 ", " "))) {
            td.appendChild(Dom.text("span", "raw", "from " + written));
        }
        return td;
    }
}
