package longrun.ui.house.answer;

import com.vaadin.flow.dom.Element;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.fuel.FuelReport;
import longrun.hotwater.HotWaterStudy;
import longrun.hotwater.Shower;
import longrun.hotwater.draw.DrawEvent;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Origin;
import longrun.plan.Appliance;
import longrun.plan.choice.Arrangement;
import longrun.pressure.PressureOrigins;
import longrun.pressure.TightestInlet;
import longrun.review.Review;
import longrun.tank.Demand;
import longrun.tank.TankReport;
import longrun.ui.house.figure.AnswerSlot;
import longrun.words.DisplayUnits;
import longrun.words.FigureText;
import longrun.words.Names;
import longrun.words.Sentence;
import longrun.words.UnitSystem;

/** The part of the answer that is about supply: pressure at the burner, vapour at the design temperature, days on a fill. */
public final class SupplyAnswer {

    private static final String NOT_YET = "not yet";

    private final AnswerSlot pressure = new AnswerSlot("pressure", "Pressure at the burner");
    private final AnswerSlot vapour = new AnswerSlot("vapour", "Vapour to plan with");
    private final AnswerSlot days = new AnswerSlot("days", "A fill lasts");
    private final AnswerSlot shower = new AnswerSlot("shower", "Shower in January");

    List<Element> elements() {
        return List.of(pressure.element(), vapour.element(), days.element(), shower.element());
    }

    /** Shows what the last review says, and puts what may be spoken of it. */
    void show(Optional<Review> review, UnitSystem units, Map<String, String> spoken) {
        showPressure(review, units, spoken);
        showVapour(review.flatMap(Review::tank), units, spoken);
        showDays(review.flatMap(Review::fuel), units, spoken);
        showShower(review.flatMap(Review::hotWater), spoken);
    }

    private void showPressure(Optional<Review> review, UnitSystem units, Map<String, String> spoken) {
        Optional<TightestInlet> tightest = review.map(Review::pressures).flatMap(TightestInlet::of);
        if (tightest.isEmpty()) {
            none(pressure);
            return;
        }
        Review r = review.orElseThrow();
        TightestInlet t = tightest.get();
        Appliance appliance = r.plan().appliances().get(t.appliance());
        String figure = DisplayUnits.APPLIANCE_PRESSURE.words(units, t.atInlet());
        put(pressure, figure);
        String name = Names.capital(Names.of(r, appliance.id()));
        String asks = t.least().isPresent()
                ? " has the least to spare; its label asks for "
                        + DisplayUnits.APPLIANCE_PRESSURE.words(units, t.least().get())
                : " gets the least; no label\u2019s least is entered";
        String others = t.unknown() == 0 ? "" : " Not compared: " + t.unknown() + ".";
        pressure.note(Sentence.of(name + asks) + others);
        pressure.origin(Optional.of(new PressureOrigins(r.pressures()).pressureAtInlet(t.appliance())));
        spoken.put("pressure", figure + " at " + name);
    }

    private void showVapour(Optional<TankReport> tank, UnitSystem units, Map<String, String> spoken) {
        Optional<Figure> planned = tank.map(TankReport::plannedBtuh).filter(Figure::isKnown);
        // A cylinder's table names no pressure: its figure stands, and the note says so.
        Optional<Figure> gives =
                planned.or(() -> tank.map(TankReport::capacityAtDesignBtuh).filter(Figure::isKnown));
        if (gives.isEmpty()) {
            none(vapour);
            return;
        }
        TankReport report = tank.orElseThrow();
        String figure = FigureText.words(gives.get(), units);
        put(vapour, figure);
        String basis = report.supplier()
                ? "as the supplier says. "
                : planned.isEmpty()
                        ? "by a table that names no pressure. "
                        : "keeping " + FigureText.words(report.keptPsig(), units) + "; "
                                + FigureText.words(report.capacityAtDesignBtuh(), units)
                                + " at most for a short time. ";
        vapour.note(basis
                + report.demands().stream()
                        .findFirst()
                        .map(d -> asked(d, report, units))
                        .orElse(""));
        vapour.origin(Optional.of(gives.get().origin()));
        spoken.put("vapour", "vapour " + figure);
    }

    private static String asked(Demand everything, TankReport report, UnitSystem units) {
        String asked = FigureText.words(everything.btuh(), units) + " asked at once: ";
        return switch (everything.status()) {
            case CARRIES -> asked + "the tank carries it.";
            case DOUBTFUL ->
                asked
                        + (report.plannedBtuh().isKnown()
                                ? "more than that" + held(everything) + "."
                                : "within the table" + held(everything) + ".");
            case SHORT -> asked + "it falls short" + held(everything) + ".";
            case UNKNOWN -> "What everything firing asks of it is not known.";
        };
    }

    private static String held(Demand d) {
        return d.lasts()
                .map(time -> ", held for " + time)
                .orElse(d.withoutEnd() ? ", held as long as there is liquid" : "");
    }

    private void showDays(Optional<FuelReport> fuel, UnitSystem units, Map<String, String> spoken) {
        Optional<Figure> coldest = fuel.map(f -> f.daysPerFill().coldestMonth()).filter(Figure::isKnown);
        if (coldest.isEmpty()) {
            none(days);
            return;
        }
        String figure = FigureText.words(coldest.get(), units);
        put(days, figure);
        Figure warmest = fuel.orElseThrow().daysPerFill().warmestMonth();
        days.note("in the coldest month"
                + (warmest.isKnown() ? "; " + FigureText.words(warmest, units) + " in the warmest." : "."));
        days.origin(Optional.of(coldest.get().origin()));
        spoken.put("days", "a fill lasts " + figure);
    }

    /** Minutes of an hour that two showers stay comfortable, in each arrangement that can be told. */
    private void showShower(Optional<HotWaterStudy> water, Map<String, String> spoken) {
        Optional<Shower.Evening> evening =
                water.flatMap(HotWaterStudy::evening).filter(e -> !e.events().isEmpty());
        if (evening.isEmpty()) {
            none(shower);
            return;
        }
        String figures = Arrays.stream(Arrangement.values())
                .map(a -> evening.get()
                        .find(a)
                        .map(e -> String.valueOf((long) Math.floor(e.minutesComfortable() + 1e-6)))
                        .orElse("?"))
                .collect(Collectors.joining(" / "));
        shower.show(Optional.of(figures), "min", "");
        shower.note("comfortable of 60, two showers: in series, on-demand alone, storage alone.");
        DrawEvent first = evening.get().events().values().iterator().next();
        shower.origin(Optional.of(Origin.derived(
                "comfortable minutes",
                figures + " min",
                "two showers of " + first.draw().gpm() / 2
                        + " gal/min each for an hour, simulated second by second; the"
                        + " storage heater begins as the days before left it",
                Confidence.COMPUTED,
                List.of())));
        spoken.put("shower", "two showers stay comfortable " + figures + " minutes of 60");
    }

    private static void none(AnswerSlot slot) {
        slot.show(Optional.empty(), "", NOT_YET);
        slot.note("");
        slot.origin(Optional.empty());
    }

    /** The number large, its unit quiet. */
    private static void put(AnswerSlot slot, String figure) {
        int blank = Character.isDigit(figure.charAt(0)) ? figure.indexOf(' ') : -1;
        slot.show(
                Optional.of(blank < 0 ? figure : figure.substring(0, blank)),
                blank < 0 ? "" : figure.substring(blank + 1),
                "");
    }
}
