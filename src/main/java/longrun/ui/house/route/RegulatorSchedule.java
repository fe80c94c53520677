package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.sections.PressureWords;
import longrun.origin.Origin;
import longrun.pressure.RegulatorOrigins;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.HeatRate;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.place.HousePage;
import longrun.words.UnitSystem;

/** Every regulator of the house: the inlet it will see, what it is set to and falls to, its rating there, what it spares. */
final class RegulatorSchedule {

    private static final int COLUMNS = 8;

    private final HousePage desk;
    private final Element heads = Dom.el("tr", "");
    private final Element body = Dom.el("tbody", "");
    private final Element words = Dom.el("dl", "from-regulators");
    private final Element element;
    private List<Line> lines = List.of();

    private record Line(String id, List<Element> cells, Element words, WhereFrom from) {}

    RegulatorSchedule(HousePage desk) {
        this.desk = desk;
        for (int c = 0; c < COLUMNS; c++) {
            heads.appendChild(Dom.text("th", "", "").setAttribute("scope", "col"));
        }
        Element box = Dom.el("div", "row-box", Dom.el("table", "plain schedule", Dom.el("thead", "", heads), body))
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", "The regulators of the house");
        element = PlacePart.folded("regulators", "The regulators", "", box, words);
        Dom.setClass(element, "regulators", true);
    }

    Element element() {
        return element;
    }

    void show(Optional<Review> review) {
        List<RegulatorPressure> all =
                review.map(r -> r.pressures().regulators()).orElse(List.of());
        Dom.show(element, !all.isEmpty());
        if (all.isEmpty()) {
            return;
        }
        lay(all);
        List<String> titles = titles(desk.units());
        for (int c = 0; c < COLUMNS; c++) {
            Dom.retext(heads.getChild(c), titles.get(c));
        }
        RegulatorOrigins origins = new RegulatorOrigins(review.orElseThrow().pressures());
        for (int r = 0; r < all.size(); r++) {
            show(lines.get(r), all.get(r), r, origins);
        }
    }

    private void lay(List<RegulatorPressure> all) {
        if (lines.stream()
                .map(Line::id)
                .toList()
                .equals(all.stream().map(r -> r.regulator().id()).toList())) {
            return;
        }
        body.removeAllChildren();
        words.removeAllChildren();
        List<Line> made = new ArrayList<>();
        for (int r = 0; r < all.size(); r++) {
            List<Element> cells = new ArrayList<>();
            for (int c = 0; c < COLUMNS; c++) {
                cells.add(
                        c == 0
                                ? Dom.text("th", "", "").setAttribute("scope", "row")
                                : Dom.text("td", "nb", "").setAttribute("data-fig", ""));
            }
            WhereFrom from = new WhereFrom("from-regulator-" + r);
            Element said = Dom.text("span", "", "");
            String id = all.get(r).regulator().id();
            body.appendChild(Dom.el("tr", "", cells.toArray(Element[]::new)));
            words.appendChild(
                    Dom.text(
                            "dt",
                            "",
                            id
                                    + all.get(r)
                                            .regulator()
                                            .name()
                                            .findText()
                                            .map(n -> ", " + n)
                                            .orElse("")),
                    Dom.el("dd", "", said, Dom.words(" "), from.ask(), from.list()));
            made.add(new Line(id, List.copyOf(cells), said, from));
        }
        lines = List.copyOf(made);
    }

    private static List<String> titles(UnitSystem units) {
        String heat = ", " + units.heatUnit().name();
        return List.of(
                "Regulator",
                "Sees at its inlet",
                "Set to",
                "All firing",
                "At no flow",
                "Can pass" + heat,
                "Must pass" + heat,
                "To spare");
    }

    private static String bare(Optional<HeatRate> rate, UnitSystem units) {
        return rate.map(units::heat).orElse("not known");
    }

    private void show(Line line, RegulatorPressure p, int index, RegulatorOrigins origins) {
        UnitSystem units = desk.units();
        Optional<HeatRate> capacity = p.capacity();
        Optional<HeatRate> spare = p.spare();
        String share = spare.isPresent() && capacity.get().btuh() > 0
                ? String.format(
                        java.util.Locale.ROOT,
                        ", %.0f %%",
                        100 * spare.get().btuh() / capacity.get().btuh())
                : "";
        boolean fromTank = p.regulator().fedBy().is("tank");
        List<String> texts = List.of(
                line.id(),
                fromTank ? "the tank" : PressureWords.pressure(p.inlet(), units),
                PressureWords.pressure(p.setting(), units),
                PressureWords.pressure(PressureWords.drooped(p), units),
                PressureWords.pressure(p.lockUp(), units),
                bare(capacity, units),
                bare(p.load().whole(), units),
                bare(spare, units) + share);
        for (int c = 0; c < texts.size(); c++) {
            Dom.retext(line.cells().get(c), texts.get(c));
        }
        String said = String.join(
                " ",
                Stream.of(PressureWords.rating(p, units), PressureWords.fall(p, units), PressureWords.loss(p, units))
                        .filter(s -> !s.isEmpty())
                        .toList());
        Dom.retext(line.words(), said);
        // the tank's own pressure is told under Tank, and is no figure here
        Stream<Origin> inlet = p.inlet().isPresent() ? Stream.of(origins.inlet(index)) : Stream.empty();
        line.from()
                .show(Stream.concat(
                                inlet,
                                Stream.of(
                                        origins.setting(index),
                                        origins.droop(index),
                                        origins.lockUp(index),
                                        origins.spare(index)))
                        .flatMap(o -> OriginSteps.of(o).stream())
                        .distinct()
                        .toList());
    }
}
