package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
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

/** The lines of a paste as they were understood, beside what was written. */
final class PasteRows {

    private PasteRows() {}

    /** What was understood of the columns, and how many lines are to be mended. */
    static String understood(RunPasteReader.Understood u) {
        long unclear = u.lines().stream().filter(l -> !l.problems().isEmpty()).count();
        return unclear == 0
                ? u.columns()
                : u.columns() + " " + unclear + (unclear == 1 ? " holds" : " hold")
                        + " an entry that is not understood, to be corrected once taken.";
    }

    /** @param firstLine place of the first among the lines, from zero */
    static Element of(List<PastedLine> lines, UnitSystem units, int firstLine) {
        Element body = Dom.el("tbody", "");
        for (int i = 0; i < lines.size(); i++) {
            PastedLine l = lines.get(i);
            body.appendChild(Dom.el(
                    "tr",
                    "",
                    Dom.text("td", "", RunNames.letter(firstLine + i)),
                    Dom.text("td", "tl", l.name()),
                    Dom.text("td", "tl", l.pipe().map(Pipe::brief).orElse("as above")),
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
