package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.drawing.plot.EveningPlot;
import longrun.hotwater.Shower;
import longrun.hotwater.draw.DrawEvent;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Flow;
import longrun.quantity.Temperature;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.Slider;
import longrun.ui.house.figure.SliderPlay;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** The evening at the shower, with four sliders to play with. What is entered stays until a set point is kept. */
final class ShowerPlay extends SliderPlay {

    private static final double TENTHS = 10;

    private final HousePage desk;
    private final Drawing plot = new Drawing("Temperature at the shower, minute by minute");
    private final Slider minutes;
    private final Slider flow;
    private final Slider storage;
    private final Slider cold;
    private final Element said = Dom.text("p", "evening", "").setAttribute("role", "status");
    private final Element element;
    private Optional<Plan> plan = Optional.empty();
    private Arrangement arrangement = Arrangement.SERIES;

    ShowerPlay(HousePage desk) {
        super("Keep this set point");
        this.desk = desk;
        minutes = new Slider("play-minutes", "Shower", 1, 120, v -> Math.round(v) + " min", v -> play());
        flow = new Slider(
                "play-flow",
                "Flow in all",
                5,
                100,
                v -> DisplayUnits.FLOW.words(desk.units(), Flow.ofGpm(v / TENTHS)),
                v -> play());
        storage = new Slider("play-storage", "Storage set to", 90, 170, this::temperature, v -> play());
        cold = new Slider("play-cold", "Cold water", 33, 85, this::temperature, v -> play());
        keepButton().addEventListener("click", e -> keep());
        element = Dom.el(
                "div",
                "",
                plot.element(),
                said,
                Dom.el("div", "plays", minutes.element(), flow.element(), storage.element(), cold.element()),
                acts(),
                kept());
    }

    private String temperature(double degF) {
        return DisplayUnits.TEMPERATURE.words(desk.units(), Temperature.ofDegF(Math.round(degF)));
    }

    Element element() {
        return element;
    }

    /** Shows a plan's evening in one arrangement; sliders a person has moved stay where they are. */
    void show(Plan shownPlan, Arrangement shown) {
        plan = Optional.of(shownPlan);
        arrangement = shown;
        refresh();
    }

    @Override
    protected void rest() {
        minutes.put(Shower.TWO_FOR_AN_HOUR.minutes());
        flow.put(Shower.TWO_FOR_AN_HOUR.gpm() * TENTHS);
        plan.flatMap(p -> p.use().flatMap(Use::hotWater))
                .flatMap(Use.HotWater::storage)
                .flatMap(s -> s.setTemp().findValue())
                .ifPresent(t -> storage.put(t.degF()));
        plan.flatMap(p -> Shower.TWO_FOR_AN_HOUR.run(p)).ifPresent(e -> cold.put(e.coldF()));
    }

    /** Writes the storage set point played with. */
    private void keep() {
        String set = Math.round(storage.value()) + " degF";
        desk.session().change(d -> d.put("/use/hotWater/storage/setTemp", set));
        Dom.retext(kept(), "Kept as what the storage heater is set to; undo takes it back.");
    }

    @Override
    protected void draw() {
        Optional<Shower.Evening> evening = plan.flatMap(p -> shower().run(p));
        Optional<DrawEvent> event = evening.flatMap(e -> e.find(arrangement));
        Dom.show(plot.element(), event.isPresent());
        Dom.show(keepButton(), isPlayed() && arrangement != Arrangement.ON_DEMAND_ONLY);
        if (event.isEmpty()) {
            Dom.retext(said, "The evening is not drawn: an entry is missing.");
            return;
        }
        plot.show(new EveningPlot(event.get(), evening.get().comfortF(), input()).svg());
        Dom.retext(said, EveningWords.of(event.get(), evening.get(), desk.units()));
    }

    private Shower shower() {
        return isPlayed()
                ? new Shower(
                        minutes.value(),
                        flow.value() / TENTHS,
                        OptionalDouble.of(storage.value()),
                        OptionalDouble.of(cold.value()))
                : Shower.TWO_FOR_AN_HOUR;
    }

    /** Input of the on-demand heater, where one is at work. */
    private OptionalDouble input() {
        if (arrangement == Arrangement.STORAGE_ONLY) {
            return OptionalDouble.empty();
        }
        Plan p = plan.orElseThrow();
        String id = p.use()
                .flatMap(Use::hotWater)
                .flatMap(Use.HotWater::onDemand)
                .flatMap(o -> o.appliance().findValue())
                .orElse("");
        return p.appliances().stream()
                .filter(a -> a.id().equals(id))
                .map(Appliance::input)
                .flatMap(i -> i.findValue().stream())
                .mapToDouble(h -> h.btuh())
                .findFirst();
    }
}
