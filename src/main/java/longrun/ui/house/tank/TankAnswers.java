package longrun.ui.house.tank;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.origin.Figure;
import longrun.quantity.Show;
import longrun.tank.Demand;
import longrun.tank.StandardTanks;
import longrun.tank.TankReport;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.FigureSlot;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;
import longrun.words.IsolatedName;
import longrun.words.Names;
import longrun.words.Sentence;

/** What follows for the tank: what is asked of it, what it holds, the smallest that would do. */
final class TankAnswers {

    private final HousePage desk;
    private final Element demandRows = Dom.el("tbody", "");
    private final Element demands;
    private final Element sizes = Dom.el("div", "");
    private final Map<String, FigureSlot> holds = new LinkedHashMap<>();
    private final Element volumes = Dom.el("dl", "slots");
    private final WhereFrom demandsFrom = new WhereFrom("from-demands");
    private final WhereFrom sizesFrom = new WhereFrom("from-smallest");
    private final Element takes = Dom.el("div", "");
    private List<String> takesShown = List.of();
    private String demandsShown = "";
    private String sizesShown = "";

    TankAnswers(HousePage desk) {
        this.desk = desk;
        Element head = Dom.el("tr", "");
        head.appendChild(
                heading("", "asked of it"),
                heading("", "load"),
                heading("tl", "the tank"),
                heading("tl", "for how long"));
        demands = Dom.el("table", "plain", Dom.el("thead", "", head), demandRows);
        for (String[] each : new String[][] {
            {"usable", "Usable, from a fill to the refill gauge"},
            {"usable-low", "Usable where the gauge is 5 % off"},
            {"now", "In the tank at the gauge\u2019s reading"},
            {"left", "Left at the refill gauge"},
            {"full", "Filled"},
            {"water", "Water capacity, all together"},
            {"kept", "Pressure to plan with"},
            {"least", "Least pressure, for a short time"}
        }) {
            FigureSlot slot = new FigureSlot(desk, each[0], each[1]);
            holds.put(each[0], slot);
            volumes.appendChild(slot.element());
        }
    }

    private static Element heading(String css, String name) {
        return Dom.text("th", css, name).setAttribute("scope", "col");
    }

    Element demands() {
        Element box = Dom.el("div", "row-box", demands)
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "What is asked of the tank");
        return Dom.el(
                "div",
                "",
                box,
                Dom.el(
                        "div",
                        "told-row",
                        Dom.el("details", "more", Dom.text("summary", "", "How they are counted"), takes),
                        demandsFrom.ask()),
                demandsFrom.list());
    }

    Element volumes() {
        return volumes;
    }

    Element sizes() {
        return Dom.el("div", "", sizes, sizesFrom.ask(), sizesFrom.list());
    }

    FigureSlot held(String id) {
        FigureSlot slot = holds.get(id);
        if (slot == null) {
            throw new IllegalArgumentException(id);
        }
        return slot;
    }

    void show(TankReport r) {
        showDemands(r);
        showTakes(r);
        demandsFrom.show(steps(r.demands().stream().map(Demand::btuh)));
        showSizes(r);
        sizesFrom.show(steps(r.smallest().stream().map(TankReport.SizeChoice::capacityBtuh)));
        held("usable").show(r.usableGal(), "");
        held("usable-low").show(r.usableGaugeLowGal(), "A float gauge may stand so far off.");
        held("now").show(r.nowGal(), "");
        held("left").show(r.refillGal(), "");
        held("full").show(r.fullGal(), "80 % of the water capacity, so that warm liquid has room.");
        held("water").show(r.waterGal(), "");
        held("kept")
                .show(r.keptPsig(), "20 psig, or what the first regulator or the tank asks for where that is more.");
        held("least").show(r.leastPsig(), "");
    }

    private static List<WhereFrom.Step> steps(Stream<Figure> figures) {
        return figures.filter(Figure::isKnown)
                .flatMap(f -> OriginSteps.of(f.origin()).stream())
                .distinct()
                .toList();
    }

    private void showDemands(TankReport r) {
        List<List<String>> rows = new ArrayList<>();
        for (Demand d : r.demands()) {
            rows.add(List.of(
                    IsolatedName.of(Names.capital(d.name())),
                    FigureText.words(d.btuh(), desk.units()),
                    status(d, r),
                    hold(d)));
        }
        if (rows.toString().equals(demandsShown)) {
            return;
        }
        demandsShown = rows.toString();
        demandRows.removeAllChildren();
        for (List<String> row : rows) {
            Element tr = Dom.el("tr", "", Dom.text("th", "", row.get(0)).setAttribute("scope", "row"));
            tr.appendChild(
                    Dom.text("td", "", row.get(1)), Dom.text("td", "tl", row.get(2)), Dom.text("td", "tl", row.get(3)));
            demandRows.appendChild(tr);
        }
    }

    private String status(Demand d, TankReport r) {
        String kept = FigureText.words(r.keptPsig(), desk.units());
        return switch (d.status()) {
            case CARRIES -> r.supplier() ? "gives it, as the supplier says" : "gives it, and keeps " + kept;
            case DOUBTFUL ->
                r.plannedBtuh().isKnown()
                        ? "gives it for a time, but falls under " + kept
                        : "gives it; the table names no pressure";
            case SHORT -> "gives less than that";
            case UNKNOWN -> "not known";
        };
    }

    private static String hold(Demand d) {
        if (d.status() == Demand.Status.UNKNOWN) {
            return "";
        }
        if (d.withoutEnd()) {
            return "as long as there is liquid";
        }
        return d.lasts().orElse("not known");
    }

    private void showTakes(TankReport r) {
        List<String> said = r.demands().stream()
                .flatMap(d -> d.takes().stream().map(t -> Sentence.of("In the " + IsolatedName.of(d.name()) + " " + t)))
                .toList();
        if (!said.equals(takesShown)) {
            takesShown = said;
            takes.removeAllChildren();
            said.forEach(t -> takes.appendChild(Dom.text("p", "s q", t)));
        }
    }

    private void showSizes(TankReport r) {
        List<String> said = new ArrayList<>();
        for (TankReport.SizeChoice c : r.smallest()) {
            said.add(said(c));
        }
        if (said.toString().equals(sizesShown)) {
            return;
        }
        sizesShown = said.toString();
        sizes.removeAllChildren();
        said.forEach(words -> sizes.appendChild(Dom.text("p", "", words)));
    }

    private String said(TankReport.SizeChoice c) {
        String where = c.underground() ? "Buried: " : "Above ground: ";
        Optional<StandardTanks.Size> size = c.size();
        if (size.isPresent()) {
            StandardTanks.Size s = size.get();
            return where + Show.whole(s.waterGal()) + " gal, " + Show.plain(s.diameterIn()) + " by "
                    + Show.plain(s.lengthIn()) + " in.; it gives " + FigureText.words(c.capacityBtuh(), desk.units())
                    + " while keeping its pressure"
                    + c.distances().map(d -> distances(d, c.underground())).orElse("") + ".";
        }
        if (c.missing().isEmpty()) {
            return where + "no standard tank gives everything firing its vapour; ask for two, or for a vaporiser.";
        }
        return where + "not known; needs "
                + c.missing().stream()
                        .limit(2)
                        .map(m -> m.words())
                        .reduce((a, b) -> a + "; " + b)
                        .orElse("") + ".";
    }

    private static String distances(StandardTanks.Distances d, boolean underground) {
        String off =
                "; at least " + Show.plain(d.buildingFt()) + " ft from a building and from a line that may be built on";
        String alone = d.aloneFt() < d.buildingFt() ? ", " + Show.plain(d.aloneFt()) + " ft where it stands alone" : "";
        return off
                + alone
                + (underground || d.betweenFt() == 0 ? "" : ", " + Show.plain(d.betweenFt()) + " ft between tanks");
    }
}
