package longrun.ui.house.tank;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.drawing.plot.VapourPlot;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.plan.GaugeReading;
import longrun.plan.Plan;
import longrun.tank.TankMoment;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FigureSlot;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.house.figure.Slider;
import longrun.ui.house.figure.SliderPlay;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;

/** The vapour plot with two sliders to play with. What is entered stays until a reading is kept. */
final class TankPlay extends SliderPlay {

    private static final String MORNING = "design temperature";

    /** One hour in a hundred of 8,760. */
    private static final String COLDER = " Some 88 hours a year are colder than the winter design temperature.";

    private final HousePage desk;
    private final Drawing plot = new Drawing("Vapour against the temperature of the air");
    private final Slider gauge;
    private final Slider air;
    private final Element sliders = Dom.el("div", "");
    private final FigureSlot rule;
    private final FigureSlot planned;
    private final Element element;
    private Optional<Plan> plan = Optional.empty();
    private Optional<TankReport> report = Optional.empty();
    private String base = "/tank";

    TankPlay(HousePage desk) {
        super("Keep this reading");
        this.desk = desk;
        gauge = new Slider("play-gauge", "Gauge", 0, 95, v -> Math.round(v) + " %", v -> play());
        air = new Slider("play-air", "Air", -50, 60, v -> signed(v) + " \u00b0F", v -> play());
        rule = new FigureSlot(desk, "rule", "At most, for a short time");
        planned = new FigureSlot(desk, "planned", "Vapour to plan with");
        keepButton()
                .addEventListener("click", e -> keep(e.getEventData().getString(TODAY)))
                .addEventData(TODAY);
        element = Dom.el(
                "div",
                "",
                plot.element(),
                PlacePart.beside(
                        sliders.appendChild(Dom.el("div", "plays", gauge.element(), air.element()), acts(), kept()),
                        Dom.el("dl", "slots", planned.element(), rule.element())));
    }

    /** The day it is where the browser stands. */
    static final String TODAY =
            "new Date(Date.now() - new Date().getTimezoneOffset() * 60000).toISOString().slice(0, 10)";

    private static String signed(double v) {
        long whole = Math.round(v);
        return whole < 0 ? "\u2212" + -whole : String.valueOf(whole);
    }

    Element element() {
        return element;
    }

    /** Shows a plan's tank; sliders a person has moved stay where they are. */
    void show(Plan shownPlan, TankReport shownReport, String tankAt) {
        plan = Optional.of(shownPlan);
        report = Optional.of(shownReport);
        base = tankAt;
        Dom.show(sliders, !shownReport.curve().isEmpty());
        refresh();
    }

    @Override
    protected void rest() {
        plan.flatMap(TankPlay::refill).ifPresent(gauge::put);
        plan.map(TankStudy::design).filter(Figure::isKnown).ifPresent(f -> air.put(f.number()));
    }

    private static Optional<Double> refill(Plan plan) {
        return plan.allTanks().stream()
                .flatMap(t -> t.refillAt().findValue().stream())
                .flatMap(g -> g instanceof GaugeReading.Share s
                        ? java.util.stream.Stream.of(s.share().percent())
                        : java.util.stream.Stream.empty())
                .findFirst();
    }

    /** Writes the gauge played with as today's reading. */
    private void keep(String today) {
        String percent = Math.round(gauge.value()) + " %";
        desk.session().change(d -> {
            d.put(base + "/gauge", percent);
            d.put(base + "/gaugeDate", today);
        });
        Dom.retext(kept(), "Kept as the gauge\u2019s reading of " + today + "; undo takes it back.");
    }

    @Override
    protected void draw() {
        if (plan.isEmpty() || report.isEmpty()) {
            return;
        }
        TankReport r = report.get();
        VapourPlot shown;
        if (isPlayed()) {
            TankMoment moment = TankStudy.at(
                    plan.get(),
                    Figure.given("gauge", gauge.value(), "%", "as played with", Confidence.MEMORY),
                    Figure.given("air", air.value(), "degF", "as played with", Confidence.MEMORY));
            shown = new VapourPlot(
                    "the tank at " + Math.round(gauge.value()) + " %",
                    moment.curve(),
                    Figure.given("air", air.value(), "degF", "as played with", Confidence.MEMORY),
                    isDesign() ? MORNING : "as you slide",
                    moment.vapour(),
                    moment.planned(),
                    "keeps " + r.keptPsig().text(),
                    r.boilingF(),
                    r.demands().get(0).btuh(),
                    r.supplier() ? moment.vapour().value() : OptionalDouble.empty(),
                    r.derived());
        } else {
            shown = VapourPlot.of(r, TankStudy.design(plan.get()), MORNING);
        }
        plot.show(shown.svg());
        String where = isPlayed()
                ? "At " + gauge.said() + " and " + air.said()
                : "At the refill gauge and the design temperature";
        String kept = FigureText.words(r.keptPsig(), desk.units());
        planned.show(
                shown.planned(),
                r.supplier()
                        ? "The supplier\u2019s own figure."
                        : where + ", the tank keeping " + kept + " for its regulator." + COLDER);
        rule.show(
                shown.vapour(),
                r.supplier()
                        ? "The supplier\u2019s figure stands for both."
                        : (r.derived() ? "Derived: the" : "The") + " tank drawn down to "
                                + FigureText.words(r.leastPsig(), desk.units())
                                + ", where a 10 psi regulator is barely fed: no figure to plan with.");
    }

    private boolean isDesign() {
        return plan.map(TankStudy::design)
                .filter(Figure::isKnown)
                .filter(f -> Math.abs(f.number() - air.value()) < 0.5)
                .isPresent();
    }
}
