package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.drawing.plot.LevelPlot;
import longrun.finding.Severity;
import longrun.fuel.FuelReport;
import longrun.fuel.LevelYear;
import longrun.fuel.TankLevel;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.quantity.Temperature;
import longrun.review.Review;
import longrun.tank.TankReport;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FigureSlot;
import longrun.ui.place.HousePage;
import longrun.words.FigureText;
import longrun.words.Names;
import longrun.words.Sentence;

/** What follows for the year: how long a fill lasts, when to call, what it costs; and the level through the year. */
final class FuelAnswers {

    private final HousePage desk;
    private final Drawing plot = new Drawing("Level of the tank through the year");
    private final Map<String, FigureSlot> slots = new LinkedHashMap<>();
    private final Element when = Dom.el("dl", "slots");
    private final Element year = Dom.el("dl", "slots");
    private final Element spell = Dom.el("dl", "slots");
    private final Element generators = Dom.el("div", "");
    private final Element warnings = Dom.el("div", "finds");
    private final Element doubts = Dom.el("ul", "doubts");
    private final Element coldName;
    private final Element warmName;
    private List<String> warned = List.of();
    private List<String> doubted = List.of();
    private String generatorsShown = "";
    private boolean spellKnown;

    FuelAnswers(HousePage desk) {
        this.desk = desk;
        slot(when, "call", "Call the supplier by");
        slot(when, "next", "The refill gauge is reached");
        coldName = slot(when, "coldest", "A fill lasts, in the coldest month");
        warmName = slot(when, "warmest", "A fill lasts, in the warmest month");
        slot(when, "mean", "A fill lasts, on the year\u2019s mean");
        slot(year, "annual", "Gas a year");
        slot(year, "deliveries", "Deliveries a year");
        slot(year, "cost", "Cost a year");
        slot(year, "co2", "Carbon dioxide a year");
        slot(spell, "spell-day", "A day at the winter design temperature burns");
        slot(spell, "spell-fill", "A fill lasts in such cold");
        slot(spell, "spell-now", "From the gauge\u2019s reading to the refill gauge in such cold");
    }

    private Element slot(Element list, String id, String name) {
        FigureSlot slot = new FigureSlot(desk, id, name);
        slots.put(id, slot);
        list.appendChild(slot.element());
        return slot.element().getChild(0);
    }

    FigureSlot slot(String id) {
        FigureSlot slot = slots.get(id);
        if (slot == null) {
            throw new IllegalArgumentException(id);
        }
        return slot;
    }

    Element level() {
        return Dom.el("div", "", plot.element(), warnings);
    }

    Element when() {
        return when;
    }

    Element year() {
        return year;
    }

    Element spell() {
        return Dom.el("div", "", spell, generators);
    }

    /** Whether there is anything to tell of a cold spell or a power cut. */
    boolean hasSpell() {
        return spellKnown || generators.getChildCount() > 0;
    }

    Element doubts() {
        return doubts;
    }

    List<String> doubted() {
        return doubted;
    }

    void show(Review review, TankReport tank, FuelReport fuel) {
        Plan plan = review.plan();
        plot.show(LevelPlot.of(plan, tank, fuel).svg());
        Dom.retext(coldName, "A fill lasts, in " + month(plan, true));
        Dom.retext(warmName, "A fill lasts, in " + month(plan, false));
        dates(plan, tank, fuel);
        String span = tank.usableGal().isKnown()
                ? FigureText.words(tank.usableGal(), desk.units()) + " from a fill to the refill gauge."
                : "";
        slot("coldest").show(fuel.daysPerFill().coldestMonth(), span);
        slot("warmest").show(fuel.daysPerFill().warmestMonth(), "");
        slot("mean").show(fuel.daysPerFill().mean(), "");
        slot("annual").show(fuel.annualGal(), "");
        slot("deliveries").show(fuel.deliveriesPerYear(), "");
        slot("cost").show(fuel.cost(), "In the money the price is written in.");
        slot("co2").show(fuel.co2Lb(), "");
        showSpell(fuel);
        showGenerators(review, fuel);
        showDoubts(review, fuel);
        warn(tank, fuel);
    }

    private void dates(Plan plan, TankReport tank, FuelReport fuel) {
        Optional<String> read = TankLevel.gaugeDate(plan).map(FuelAnswers::written);
        String from =
                read.map(d -> "From the gauge\u2019s reading of " + d + ". ").orElse("");
        Optional<Origin> next = fuel.nextRefill().map(d -> reached(d, read.orElse(""), tank, fuel));
        date("next", fuel.nextRefill(), from, next, fuel);
        Optional<Double> days = plan.site().flatMap(s -> s.leadDays().findValue());
        String lead = days.map(d -> FigureText.number(d, "days", desk.units()) + " days ahead of the refill gauge. ")
                .orElse("");
        Optional<Origin> call = fuel.callBy()
                .flatMap(d -> next.map(n -> Origin.derived(
                        "call by",
                        written(d),
                        "the day the refill gauge is reached, less the days from call to truck",
                        Confidence.COMPUTED,
                        List.of(n, Origin.entered("days from call to truck", String.valueOf(days.orElse(0.0)))))));
        date("call", fuel.callBy(), lead, call, fuel);
    }

    private static Origin reached(LocalDate date, String read, TankReport tank, FuelReport fuel) {
        return Origin.derived(
                "refill gauge reached",
                written(date),
                "day by day from the gauge\u2019s reading, each day\u2019s use taken off",
                Confidence.COMPUTED,
                List.of(
                        Origin.entered("gauge read on", read),
                        tank.nowGal().origin(),
                        tank.refillGal().origin(),
                        fuel.annualGal().origin()));
    }

    private void date(String id, Optional<LocalDate> date, String words, Optional<Origin> origin, FuelReport fuel) {
        if (date.isPresent() && origin.isPresent()) {
            slot(id).show(written(date.get()), words, origin.get());
        } else {
            slot(id).showUnknown(fuel.dateMissing());
        }
    }

    static String written(LocalDate date) {
        return LevelPlot.day(date) + " " + date.getYear();
    }

    private static String month(Plan plan, boolean coldest) {
        Optional<List<Temperature>> means = plan.site()
                .map(Site::monthlyMeanTemp)
                .flatMap(f -> f.findValue())
                .filter(l -> l.size() == 12);
        if (means.isEmpty()) {
            return coldest ? "the coldest month" : "the warmest month";
        }
        int chosen = 0;
        for (int m = 1; m < 12; m++) {
            double here = means.get().get(m).degF();
            double best = means.get().get(chosen).degF();
            chosen = (coldest ? here < best : here > best) ? m : chosen;
        }
        return java.time.Month.of(chosen + 1).getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH);
    }

    private void showSpell(FuelReport fuel) {
        spellKnown = fuel.coldSpell().isPresent();
        Dom.show(spell, spellKnown);
        fuel.coldSpell().ifPresent(c -> {
            slot("spell-day").show(c.galPerDay(), "");
            slot("spell-fill").show(c.daysPerFill(), "");
            slot("spell-now").show(c.daysFromNow(), "");
        });
    }

    private void showGenerators(Review review, FuelReport fuel) {
        List<String> said = new ArrayList<>();
        for (FuelReport.GeneratorHours g : fuel.generators()) {
            said.add(Names.capital(Names.of(review, g.appliance())) + ": at full load " + words(g.galPerHour())
                    + ", at half about " + words(g.galPerHourHalf()) + ". At full load it runs " + words(g.fromFull())
                    + " on a full tank, " + words(g.fromNow()) + " on what is in the tank, " + words(g.fromRefill())
                    + " on what is left at the refill gauge.");
        }
        if (!said.toString().equals(generatorsShown)) {
            generatorsShown = said.toString();
            generators.removeAllChildren();
            said.forEach(w -> generators.appendChild(Dom.text("p", "", w)));
        }
    }

    private String words(Figure f) {
        return FigureText.words(f, desk.units());
    }

    private void showDoubts(Review review, FuelReport fuel) {
        List<String> now = new ArrayList<>();
        fuel.doubts()
                .forEach(d ->
                        now.add(d.words() + " " + Names.capital(d.figure().name()) + ": " + words(d.figure()) + "."));
        Figure water = fuel.byUse().getOrDefault("hot-water", Figure.unknown("hot water", "gal", List.of()));
        if (water.isKnown() && water.number() == 0) {
            now.add("Hot water burns no gas here: over the day the storage heater makes all of it with current.");
        }
        if (fuel.roomHeatGal().isKnown() && fuel.roomHeatGal().number() > 0) {
            now.add("The storage heater takes heat out of the heated house: of the heating, "
                    + words(fuel.roomHeatGal()) + " a year make up for it.");
        }
        fuel.assumptions().forEach(a -> now.add(Sentence.of("taken: " + a)));
        if (!fuel.notCounted().isEmpty()) {
            now.add("Not counted in the year, because no use is entered for it: "
                    + String.join(
                            ", ",
                            fuel.notCounted().stream()
                                    .map(id -> Names.of(review, id))
                                    .toList()) + ".");
        }
        if (!now.equals(doubted)) {
            doubted = List.copyOf(now);
            doubts.removeAllChildren();
            now.forEach(w -> doubts.appendChild(Dom.text("li", "", w)));
        }
    }

    /** What the level says that a person must not miss. */
    private void warn(TankReport tank, FuelReport fuel) {
        List<String> now = new ArrayList<>();
        fuel.level().ifPresent(l -> {
            for (LevelYear.NoTruck gap : l.noTruck()) {
                if (gap.belowRefill()) {
                    now.add("Between " + LevelPlot.day(gap.from()) + " and " + LevelPlot.day(gap.to())
                            + ", when no truck can come, the tank falls under its refill gauge; it stands at "
                            + share(tank, gap.endGal()) + " at the end. A fill before " + LevelPlot.day(gap.from())
                            + " keeps it higher.");
                }
            }
            l.dry().ifPresent(d -> now.add("The tank runs empty on " + written(d) + "."));
        });
        if (!now.equals(warned)) {
            warned = List.copyOf(now);
            warnings.removeAllChildren();
            now.forEach(w -> warnings.appendChild(FindingLine.sentence(Severity.CAUTION, w)));
        }
    }

    private String share(TankReport tank, double gallons) {
        return tank.waterGal().isKnown()
                ? Math.round(100 * gallons / tank.waterGal().number()) + " %"
                : FigureText.words(gallons, "gal", desk.units());
    }
}
