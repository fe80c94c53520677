package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.drawing.plot.LevelPlot;
import longrun.fuel.Calibration;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;

/** Past deliveries held against the model, and the house's K-factor. */
final class TicketsTable {

    private final HousePage desk;
    private final Element body = Dom.el("tbody", "");
    private final Element box;
    private final Element said = Dom.text("p", "lede s start-note", "");
    private final Element element;
    private String shown = "";

    TicketsTable(HousePage desk) {
        this.desk = desk;
        Element head = Dom.el("tr", "");
        for (String title : List.of("between", "on the ticket", "the model", "degree days", "K")) {
            head.appendChild(Dom.text("th", "", title).setAttribute("scope", "col"));
        }
        box = Dom.el("div", "row-box", Dom.el("table", "plain", Dom.el("thead", "", head), body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Tickets against the model");
        element = Dom.el("div", "", said, box);
        Dom.show(box, false);
    }

    Element element() {
        return element;
    }

    void show(Optional<Calibration> calibration) {
        Dom.show(box, calibration.isPresent());
        Dom.retext(
                said,
                calibration
                        .map(this::words)
                        .orElse(
                                "With two tickets and a climate the model is held against what was really burnt; with four it is fitted."));
        List<List<String>> rows = new ArrayList<>();
        calibration.ifPresent(c -> c.intervals().forEach(i -> rows.add(row(i))));
        if (rows.toString().equals(shown)) {
            return;
        }
        shown = rows.toString();
        body.removeAllChildren();
        for (List<String> row : rows) {
            Element tr = Dom.el("tr", "", Dom.text("th", "", row.get(0)).setAttribute("scope", "row"));
            row.subList(1, row.size()).forEach(c -> tr.appendChild(Dom.text("td", "", c)));
            body.appendChild(tr);
        }
    }

    private List<String> row(Calibration.Interval i) {
        return List.of(
                LevelPlot.day(i.from()) + " " + i.from().getYear() + " to " + LevelPlot.day(i.to()) + " "
                        + i.to().getYear(),
                FigureText.words(i.gallons(), "gal", desk.units()),
                Double.isNaN(i.modelGal()) ? "not known" : FigureText.words(i.modelGal(), "gal", desk.units()),
                String.format(Locale.ROOT, "%,.0f", i.degreeDays()),
                String.format(Locale.ROOT, "%.2f", i.k()));
    }

    private String words(Calibration c) {
        StringBuilder out = new StringBuilder();
        if (c.kFactor().isPresent()) {
            out.append(String.format(
                    Locale.ROOT,
                    "K-factor %.2f: degree days for each gallon, base 65 \u00b0F; the higher, the more frugal the house. ",
                    c.kFactor().getAsDouble()));
        }
        if (c.scale().isPresent()) {
            out.append(String.format(
                    Locale.ROOT,
                    "The tickets come to %.0f %% of the model. ",
                    100 * c.scale().getAsDouble()));
        }
        if (c.baseGalPerDay().isPresent() && c.galPerDegreeDay().isPresent()) {
            out.append(String.format(
                    Locale.ROOT,
                    "By least squares: %.2f gal a day without heating and %.3f gal a degree day. ",
                    c.baseGalPerDay().getAsDouble(),
                    c.galPerDegreeDay().getAsDouble()));
        }
        return out.append("A ticket counts gallons at 60 \u00b0F, and a fill may be partial.")
                .toString();
    }
}
