package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.drawing.tank.WaterSide;
import longrun.drawing.tank.WaterValves;
import longrun.fuel.StorageSaving;
import longrun.hotwater.HotWaterStudy;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Scale;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FiguresPlace;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.house.findings.FindingLines;
import longrun.ui.place.HousePage;

/** The place of hot water. Its figures are worked out a moment after a key, which only stores the entry. */
public final class HotWaterView extends FiguresPlace {

    private final HousePage desk;
    private final WaterFields entries;
    private final WaterLists lists;
    private final Scale<Arrangement> positions;
    private final Drawing waterSide = new Drawing("The water side and its valves");
    private final ShowerPlay play;
    private final WaterTables tables;
    private final Element verdict = Dom.text("p", "verdict", "").setAttribute("role", "status");
    private final WhereFrom from = new WhereFrom("from-saving");
    private final FindingLines findings;
    private final Element storage;
    private final Element onDemand;
    private final List<Element> figures;
    private Arrangement shown = Arrangement.SERIES;
    private final Element example = Dom.text(
            "p", "lede s", "An example, drawn with both heaters: what your house has is said at Hot water comes from.");
    private boolean picked;

    public HotWaterView(HousePage desk) {
        this.desk = desk;
        entries = new WaterFields(desk, fields());
        lists = new WaterLists(desk, fields());
        play = new ShowerPlay(desk);
        tables = new WaterTables(desk);
        findings = new FindingLines(desk, f -> PlaceKind.HOT_WATER.holds(f.field()) || f.at().equals("hot-water"));
        positions = new Scale<>(
                "positions",
                "h-valves",
                List.of(Arrangement.values()),
                a -> Scale.Choice.of(EveningWords.name(a), WaterValves.words(a)),
                this::position);
        positions.setValue(shown);
        storage = PlacePart.of(
                "storage", "Storage heater", "Heat pump, element, or both; no propane.", entries.storage());
        onDemand = PlacePart.of(
                "ondemand", "On-demand heater", "Behind the storage heater, or alone.", entries.onDemand());
        Element valves = PlacePart.of(
                "valves",
                "Valves, and how they stand",
                "The two relief valves and valve 7 are never closed. Storage taken out: its breaker off first; before use"
                        + " again drained, or run up to 140 \u00b0F. On-demand taken out: its gas closed first.",
                example,
                positions.getElement(),
                waterSide.element());
        Element evening = PlacePart.of(
                "evening",
                "A long shower in January",
                "Two showers for an hour, to begin with; July where the house stands in the south. Slide, and it answers; what"
                        + " is entered stays.",
                play.element());
        Element side = PlacePart.of(
                "side",
                "The three arrangements",
                "With the set points as entered; beside them what to turn to.",
                tables.arrangements());
        Element months = PlacePart.of(
                "flows",
                "Largest flow by month",
                "The on-demand heater at full fire, storage cold or out.",
                tables.months());
        Element saves = PlacePart.of(
                "saves",
                "What the storage heater saves",
                "A year, against on-demand alone.",
                verdict,
                tables.savings(),
                from.ask(),
                from.list());
        figures = List.of(evening, side, months, saves);
        Element used = PlacePart.of("used", "What is used", "", entries.used());
        boolean begun = PlaceStatus.isStarted(desk.session(), PlaceKind.HOT_WATER);
        if (!begun) { // what draws an example stands behind the entries that make it the house's own
            holds(used);
        }
        holds(valves, evening);
        if (begun) {
            holds(used);
        }
        holds(
                storage,
                onDemand,
                PlacePart.of(
                        "draws",
                        "Draws of a day",
                        "Their shape; their sum is the hot water a day. With none, a standard test\u2019s day stands in.",
                        lists.draws()),
                side,
                months,
                saves,
                PlacePart.folded("found", "Valves in the house", "As they sit, not as they should.", lists.valves()),
                findings.element());
    }

    @Override
    protected boolean drawEntries() {
        Dom.show(storage, entries.asksForStorage());
        Dom.show(onDemand, entries.asksForOnDemand());
        return lists.draw();
    }

    /** Shows another arrangement in drawing and evening; what the house has stays as entered. */
    void position(Arrangement a) {
        picked = true;
        shown = a;
        work();
    }

    @Override
    protected void work() {
        Optional<Review> review = desk.session().review();
        Optional<HotWaterStudy> study = review.flatMap(Review::hotWater);
        figures.forEach(f -> Dom.show(f, study.isPresent()));
        findings.show();
        if (!picked) {
            study.flatMap(HotWaterStudy::chosen).ifPresent(a -> {
                shown = a;
                positions.setValue(a);
            });
        }
        Dom.show(
                example,
                review.flatMap(r -> r.plan().use())
                        .flatMap(Use::hotWater)
                        .flatMap(w -> w.arrangement().findValue())
                        .isEmpty());
        waterSide.show(drawing(review.map(Review::plan)).svg());
        if (study.isEmpty()) {
            return;
        }
        Plan plan = review.orElseThrow().plan();
        play.show(plan, shown);
        List<StorageSaving> savings = StorageSaving.of(plan, study.get());
        tables.show(study.get(), savings);
        Dom.retext(verdict, SavingWords.of(savings, study.get().chosen(), desk.units()));
        from.show(savings.stream()
                .flatMap(s -> Stream.of(s.savedGalAfter(), s.savedMoneyAfter(), s.savedCo2LbAfter()))
                .filter(Figure::isKnown)
                .flatMap(f -> OriginSteps.of(f.origin()).stream())
                .distinct()
                .toList());
    }

    private WaterSide drawing(Optional<Plan> plan) {
        Optional<Use.HotWater> water = plan.flatMap(Plan::use).flatMap(Use::hotWater);
        return new WaterSide(
                shown,
                set(water.flatMap(Use.HotWater::storage)
                        .flatMap(s -> s.setTemp().findValue())),
                set(water.flatMap(Use.HotWater::onDemand)
                        .flatMap(o -> o.setTemp().findValue())),
                set(water.flatMap(w -> w.mixingValve().findValue())),
                "cold main");
    }

    private String set(Optional<longrun.quantity.Temperature> t) {
        return t.map(f -> "set " + EveningWords.temperature(f.degF(), desk.units()))
                .orElse("set to ?");
    }
}
