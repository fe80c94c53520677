package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.drawing.plot.FillYearPlot;
import longrun.drawing.plot.LevelPlot;
import longrun.fuel.fill.FillReport;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/** Below the entries: the level through the year, the standard tanks, the past fills. */
final class FillDetails {

    private final Element plot = Dom.el("div", "plot");
    private final Element words = Dom.text("span", "q", "");
    private final TankSizesTable ladder = new TankSizesTable();
    private final PastFillTable past;
    private final Element element;
    private String shown = "-";

    FillDetails(FillActions hand) {
        past = new PastFillTable(hand);
        plot.setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "Level through the year");
        Element level = Dom.el("section", "level", Dom.el("h2", "", Dom.words("Level through the year "), words), plot);
        element = Dom.el("div", "below", level, ladder.element(), past.element());
    }

    Element element() {
        return element;
    }

    PastFillTable past() {
        return past;
    }

    void show(FillDraft draft, Optional<FillReport> report, LocalDate today, UnitSystem units, String typing) {
        past.show(draft, report, today, units, typing);
        ladder.show(report, units);
        Optional<FillYearPlot> drawn = report.filter(r -> !r.isNoUse()).flatMap(FillYearPlot::of);
        String svg = drawn.map(FillYearPlot::svg).orElse("");
        if (!svg.equals(shown)) {
            shown = svg;
            plot.setProperty("innerHTML", svg);
            Dom.show(plot, !svg.isEmpty());
        }
        Dom.retext(words, drawn.map(FillDetails::says).orElse("drawn once the gauge is read and the use is known"));
    }

    private static String says(FillYearPlot p) {
        int n = p.year().deliveries().size();
        return "from " + Math.round(100 * p.year().gallons().get(0) / p.waterGal()) + " % on "
                + LevelPlot.day(p.year().from()) + ", " + (n == 0 ? "no fill" : n == 1 ? "one fill" : n + " fills");
    }
}
