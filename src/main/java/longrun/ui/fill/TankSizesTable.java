package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.Rung;
import longrun.origin.Figure;
import longrun.tank.Demand;
import longrun.tank.StandardTanks;
import longrun.ui.frame.Dom;
import longrun.words.UnitSystem;

/** Which tank to ask for: each standard size with the days of a fill, its vapour and the distance it needs. */
final class TankSizesTable {

    private final Element caption = Dom.text("span", "q", "");
    private final Element rows = Dom.el("div", "");
    private final Element note = Dom.text("p", "q s", "");
    private final Element element =
            Dom.el("section", "", Dom.el("h2", "", Dom.words("Which tank to ask for "), caption), rows, note);
    private String shown = "";

    Element element() {
        return element;
    }

    void show(Optional<FillReport> report, UnitSystem units) {
        List<Rung> ladder = report.map(FillReport::ladder).orElse(List.of());
        boolean known = ladder.stream()
                .anyMatch(r -> r.coldestDays().isKnown() && r.coldestDays().number() > 0);
        Dom.retext(
                caption,
                report.filter(r -> known)
                        .map(r -> "this house, " + FillSlots.month(r.coldest()))
                        .orElse(""));
        if (!known) {
            fill(Dom.text("p", "q", "Each standard tank stands here once the use and the climate are known."));
            Dom.retext(note, "");
            return;
        }
        double most = ladder.stream()
                .map(Rung::coldestDays)
                .filter(Figure::isKnown)
                .mapToDouble(Figure::number)
                .max()
                .orElse(1);
        Element head = Dom.el("tr", "");
        String feet = units == UnitSystem.CUSTOMARY ? "Feet off" : "Metres off";
        head.appendChild(
                Dom.text("th", "tl", "gal").setAttribute("scope", "col"),
                Dom.text("th", "tl", "Days a fill lasts")
                        .setAttribute("scope", "col")
                        .setAttribute("colspan", "2"),
                Dom.text("th", "tl", "Vapour").setAttribute("scope", "col"),
                Dom.text("th", "", feet).setAttribute("scope", "col"));
        Element body = Dom.el("tbody", "");
        ladder.forEach(r -> body.appendChild(row(r, most, units)));
        fill(Dom.el(
                "table",
                "ladder",
                Dom.text("caption", "vh", "Standard tanks for this house"),
                Dom.el("thead", "", head),
                body));
        Dom.retext(note, note(ladder, units));
    }

    private void fill(Element content) {
        String now = content.getOuterHTML();
        if (!now.equals(shown)) {
            shown = now;
            Dom.fill(rows, content);
        }
    }

    private static Element row(Rung r, double most, UnitSystem units) {
        double share = r.coldestDays().isKnown() ? 100 * r.coldestDays().number() / most : 0;
        Demand.Status status = r.everything().status();
        String css = status == Demand.Status.SHORT ? "tl must" : status == Demand.Status.DOUBTFUL ? "tl caut" : "tl";
        Element size = Dom.text("th", "id", String.format(Locale.ROOT, "%,.0f", r.waterGal()))
                .setAttribute("scope", "row");
        if (r.standsThere()) {
            size.appendChild(Dom.text("span", "vh", " (stands there)"));
        }
        String lasts = status == Demand.Status.CARRIES
                ? ""
                : r.everything().lasts().map(w -> ", " + w).orElse("");
        return Dom.el(
                "tr",
                r.standsThere() ? "on" : "",
                size,
                Dom.el(
                        "td",
                        "bar",
                        Dom.el(
                                "span",
                                "",
                                Dom.el("i", "").setAttribute("style", "width:" + Math.round(share * 10) / 10.0 + "%"))),
                Dom.text("td", "dy", FillWords.fill(r.coldestDays(), units)),
                Dom.text("td", css, status == Demand.Status.UNKNOWN ? "not known" : word(status) + lasts),
                Dom.text(
                        "td",
                        "",
                        r.distances()
                                .map(d -> FillWords.feet(d.buildingFt(), units))
                                .orElse("not known")));
    }

    private static String word(Demand.Status status) {
        return status.name().toLowerCase(Locale.ROOT);
    }

    private static String note(List<Rung> ladder, UnitSystem units) {
        boolean none = ladder.stream().allMatch(r -> r.everything().status() == Demand.Status.SHORT);
        String help = none
                ? "No standard tank alone carries everything firing: ask the supplier for several, or for a vaporiser. "
                : "";
        String alone = ladder.stream()
                .filter(r ->
                        r.distances().filter(d -> d.aloneFt() < d.buildingFt()).isPresent())
                .reduce((a, b) -> b)
                .map(r -> alone(r, r.distances().orElseThrow(), units))
                .orElse("");
        return help
                + "Vapour with everything firing at the refill gauge on the coldest morning, and how long it is held. Off from the house and from the property line by NFPA 58 6.4.1"
                + alone + ".";
    }

    private static String alone(Rung r, StandardTanks.Distances d, UnitSystem units) {
        return String.format(
                Locale.ROOT, "; %,.0f gal standing alone: %s", r.waterGal(), FillWords.feet(d.aloneFt(), units));
    }
}
